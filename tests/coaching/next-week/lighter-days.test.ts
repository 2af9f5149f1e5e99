import { plannedLoads } from "../../../src/coaching/next-week/present-step/planned-loads";
import type {
  AskedLess,
  LiftedDay,
} from "../../../src/coaching/next-week/present-step/reason-under-plan";
import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import { slowDay } from "../../../src/coaching/next-week/slow-day/slow-day";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import type { SquadRows } from "../../../src/coaching/record/squad-rows";
import { lineReasonWords } from "../../../src/words/week";
import { gapped } from "../blocks/gapped";
import { athlete, day, movesAt, race, session, squadRows, state } from "./written-squad";

const name = "Tomas Reyerson";
/** 0.86 at the marker of 67.5 kg, as in the ordinary week. */
const speed = (kg: number) => 0.28 + 1.45 * (1 - kg / 112);
const lead = movesAt(speed).usualLead;

/** A session at a load whose marker was so much slower than usual, m/s. */
const on = (iso: string, loadKg: number, slower: number, over: Partial<LiftingSet> = {}) =>
  session(name, iso, { sets: 3, reps: 5, loadKg, markerKg: 67.5 }, over).map((set) =>
    set.kind === "marker" ? { ...set, repSpeeds: Array(3).fill(speed(67.5) - slower) } : set,
  );
const weekOf = (
  monday: string,
  sets: readonly LiftingSet[],
  over: Partial<SquadRows> = {},
  known = state(name, movesAt(speed)),
) => {
  const line = proposeLine({
    athlete: athlete(name),
    name,
    state: known,
    rows: squadRows({ sets, ...over }),
    monday: day(monday),
    asOf: day(monday) - 1,
  });
  return {
    loads: line.sessions.map(({ sets: count, reps, loadKg }) => `${count}x${reps} ${loadKg}`),
    said: line.reasons.map(lineReasonWords),
    odd: line.odd,
  };
};
const twoWeeks = ["2026-04-21", "2026-04-23", "2026-04-28"].flatMap((iso) => on(iso, 85, 0));

test("what a slow marker took off is of that day: the next week is planned at the load from before it", () => {
  const { loads, said } = weekOf("2026-05-04", [...twoWeeks, ...on("2026-04-30", 75, 0.12)]);
  expect(loads).toEqual(["3x5 85", "3x5 85"]);
  expect(said).toEqual(["75 kg last session, a slow day: planned on from 85 kg."]);
});

test("slow days one after another take the bar no lower than the card does, and hold the step", () => {
  const slow = ["2026-04-30", "2026-05-05", "2026-05-07", "2026-05-12"].flatMap((iso) =>
    on(iso, 80, 0.08),
  );
  expect(weekOf("2026-05-18", [...twoWeeks, ...slow]).loads[0]).toBe("3x5 85");
  // Once a day at the plan went well, the weeks at it count, those of the slow days too.
  const well = weekOf("2026-05-18", [...twoWeeks, ...slow, ...on("2026-05-14", 85, 0)]);
  expect(well.loads[0]).toBe("5x3 87.5");
});

test("a lighter session on a usual day, with more repetitions, or after time off is the plan itself", () => {
  const next = (...sets: LiftingSet[]) => weekOf("2026-05-04", [...twoWeeks, ...sets]).loads[0];
  expect(next(...on("2026-04-30", 75, 0))).toBe("3x5 75");
  expect(
    next(...session(name, "2026-04-30", { sets: 3, reps: 5, loadKg: 75, markerKg: 67.5 })),
  ).toBe("3x5 75");
  const threes = ["2026-04-21", "2026-04-28"].flatMap((iso) =>
    on(iso, 85, 0).map((set) => ({ ...set, reps: 3 })),
  );
  expect(weekOf("2026-05-04", [...threes, ...on("2026-04-30", 75, 0)]).loads[0]).toBe("3x5 75");
  // Off from 28 April to 12 May: a grade, however slow its marker.
  expect(weekOf("2026-05-18", [...twoWeeks, ...on("2026-05-12", 75, 0.12)]).loads[0]).not.toBe(
    "3x5 85",
  );
});

test("a first work set slow at its load says the same where no marker is taken", () => {
  const work = (iso: string, loadKg: number, slower: number) =>
    session(name, iso, { sets: 3, reps: 5, loadKg, markerKg: 67.5 })
      .filter(({ kind }) => kind === "work")
      .map((set) => ({ ...set, repSpeeds: Array(5).fill(speed(loadKg) - slower) }));
  const before = ["2026-04-21", "2026-04-23", "2026-04-28"].flatMap((iso) => work(iso, 85, 0));
  expect(weekOf("2026-05-04", [...before, ...work("2026-04-30", 77.5, 0.09)]).loads[0]).toBe(
    "3x5 85",
  );
  expect(weekOf("2026-05-04", [...before, ...work("2026-04-30", 77.5, 0.01)]).loads[0]).toBe(
    "3x5 77.5",
  );
});

test("repetitions left on a slow day say nothing of the plan; those of the session at it do", () => {
  // With one left at the plan its sixth repetition would be the last, and 85 kg no 3×5 any more.
  const slow = on("2026-04-30", 75, 0.12, { repsInReserve: 1 });
  expect(weekOf("2026-05-04", [...twoWeeks, ...slow]).loads[0]).toBe("3x5 85");
});

test("usual loads come again after a marathon, whole sets with them", () => {
  const races = [race("2026-05-03", 9, { race: "R1", distanceKm: 42.195 })];
  // Eased by the rule: 10 % off 85 is 76.5, on plates 75, two of three sets.
  const eased = session(name, "2026-05-12", { sets: 2, reps: 5, loadKg: 75, markerKg: 67.5 });
  const before = [...twoWeeks, ...on("2026-04-30", 85, 0), ...eased];
  expect(weekOf("2026-05-11", before, { races }).loads[0]).toBe("2x5 75");
  const { loads, said } = weekOf("2026-05-18", before, { races });
  expect(loads[0]).toBe("3x5 85");
  expect(said[0]).toBe("75 kg last session, eased for a race: planned on from 85 kg.");
  // A week eased by its Tuesday is eased on its Thursday, eleven days after.
  const thursday = eased.map((set) => ({ ...set, day: day("2026-05-14") }));
  expect(weekOf("2026-05-18", [...before, ...thursday], { races }).loads[0]).toBe("3x5 85");
});

type Lifted = readonly [iso: string, loadKg: number, reps: number, why?: AskedLess, sets?: number];
const plans = (days: readonly Lifted[], over: Partial<LiftedDay> = {}) =>
  plannedLoads(
    gapped(
      days.map(([iso, loadKg, reps, , sets = 3]) => ({
        day: day(iso),
        loadKg,
        lastKg: loadKg,
        reps,
        sets,
        missed: false,
        timed: false,
        movedWell: true,
        reserve: null,
        ...(iso === days[days.length - 1]![0] && over),
      })),
    ),
    2,
    {
      lessOn: (one) => days.find(([iso]) => day(iso) === one.day)?.[3] ?? null,
      plannedFor: () => null,
    },
  );

test("a day's loads go back to the last whole one, not to one from before a break or a new rotation", () => {
  const loads = (days: readonly Lifted[]) => plans(days).map(({ loadKg }) => loadKg);
  expect(
    loads([
      ["2026-05-05", 85, 5],
      ["2026-05-07", 75, 5, "slow"],
      ["2026-05-14", 77.5, 3, "slow"],
      ["2026-05-19", 80, 3],
      ["2026-05-21", 70, 5, "slow"],
      ["2026-06-11", 60, 5, "slow"],
    ]),
  ).toEqual([85, 85, 85, 80, 70, 60]);
  // Twelve days are time off, and the rest after a marathon none; three weeks are time off whatever they were.
  const after = (iso: string, why: AskedLess) =>
    loads([
      ["2026-05-05", 85, 5],
      ["2026-05-07", 85, 5],
      [iso, 75, 5, why],
    ])[2];
  expect([after("2026-05-19", "slow"), after("2026-05-19", "eased")]).toEqual([75, 85]);
  expect(after("2026-05-28", "eased")).toBe(75);
});

test("lighter with fewer sets is a lighter week, for one week; lighter alone has no reason and is the plan", () => {
  const week = [
    ["2026-05-07", 85, 5],
    ["2026-05-12", 72.5, 5, null, 2],
    ["2026-05-14", 72.5, 5, null, 2],
  ] as const;
  const light = { loadKg: 85, liftedKg: 72.5, less: "light", droppedFromKg: null };
  expect(plans(week).slice(1)).toEqual([light, light]);
  expect(plans([...week, ["2026-05-18", 72.5, 5, null, 2]])[3]).toEqual(light);
  const longer = { loadKg: 72.5, liftedKg: 72.5, less: null, droppedFromKg: 85 };
  expect(plans([...week, ["2026-05-19", 72.5, 5, null, 2]])[3]).toEqual(longer);
  expect(plans([week[0], ["2026-05-12", 72.5, 5]])[1]).toEqual(longer);
  // Poor movement, a limit or pain: nobody goes back to the load before it, and nobody is asked why.
  const poor = { ...longer, droppedFromKg: null };
  expect(plans(week.slice(0, 2), { movedWell: false })[1]).toEqual(poor);
  expect(plans([week[0], ["2026-05-12", 72.5, 5, "may not", 2]])[1]).toEqual(poor);
  expect(plans([week[0], ["2026-05-12", 72.5, 5, "slow"]], { movedWell: null })[1]).toMatchObject({
    loadKg: 85,
    less: "slow",
  });
});

test("a lighter day is of that day where the plan was lifted again within the week, whatever else is written", () => {
  const days = [
    ["2026-05-05", 57.5, 5],
    ["2026-05-12", 50, 5],
  ] as const;
  const back = (iso: string, loadKg: number) => plans([...days, [iso, loadKg, 5]])[1]!.less;
  expect([back("2026-05-19", 57.5), back("2026-05-19", 60)]).toEqual(["slow", "slow"]);
  expect([back("2026-05-20", 57.5), back("2026-05-14", 55)]).toEqual([null, null]);
  // By eye on a Tuesday, whole on the Thursday: the weeks at the step go on.
  const sets = ["2026-04-14", "2026-04-21", "2026-04-23"].flatMap((iso) => on(iso, 85, 0));
  const eye = [...sets, ...on("2026-04-28", 75, 0), ...on("2026-04-30", 85, 0)];
  expect(weekOf("2026-05-04", eye).loads[0]).toBe("5x3 87.5");
});

test("after few repetitions in reserve, or missed ones, a lighter load is not asked about", () => {
  const asked = (reserve: number, missed = false) => {
    const day5 = { reps: 5, sets: 3, movedWell: true, missed: false, timed: false };
    return plannedLoads(
      gapped([
        { ...day5, day: day("2026-05-05"), loadKg: 85, lastKg: 85, reserve, missed },
        { ...day5, day: day("2026-05-12"), loadKg: 82.5, lastKg: 82.5, reserve: 3 },
      ]),
      2,
      { lessOn: () => null, plannedFor: () => null },
    )[1]!.droppedFromKg;
  };
  expect([asked(1), asked(2), asked(2, true)]).toEqual([null, 85, null]);
});

test("a lighter week is counted from its own first day, not from a slow day before it", () => {
  const week = plans([
    ["2026-05-05", 85, 5],
    ["2026-05-07", 75, 5, "slow"],
    ["2026-05-14", 72.5, 5, null, 2],
    ["2026-05-19", 72.5, 5, null, 2],
  ]);
  expect(week.map(({ less }) => less)).toEqual([null, "slow", "light", "light"]);
});

test("ten days without the lift are its time off to whoever comes twice a week: nobody who comes once is asked why it was lighter", () => {
  const asked = (iso: string) =>
    plannedLoads(
      gapped([
        { day: day("2026-05-05"), loadKg: 85 },
        { day: day(iso), loadKg: 80 },
      ]).map((one) => ({
        ...{ ...one, lastKg: one.loadKg, reps: 5, sets: 3, missed: false, timed: false },
        ...{ movedWell: true, reserve: null },
      })),
      1,
      { lessOn: () => null, plannedFor: () => null },
    )[1]!.droppedFromKg;
  expect([asked("2026-05-14"), asked("2026-05-15")]).toEqual([85, null]);
});

test("after a lighter week the load from before it comes again, whole sets with it", () => {
  const lighter = on("2026-04-30", 72.5, 0).filter(({ set }) => set !== 3);
  const { loads, said } = weekOf("2026-05-04", [...twoWeeks, ...lighter]);
  expect(loads[0]).toBe("3x5 85");
  expect(said[0]).toBe(
    "72.5 kg last session, with fewer sets, as in a lighter week: planned on from 85 kg.",
  );
});

test("a load that is lighter for no reason in the rows is gone on from, and asked about", () => {
  const strong = state(name, { ...movesAt(speed), strengthLowKg: 112 });
  const away = [...twoWeeks, ...on("2026-04-30", 75, 0)];
  const { loads, said, odd } = weekOf("2026-05-04", away, {}, strong);
  expect(loads[0]).toBe("3x5 75");
  expect(said).toContain(
    "Lighter than the 85 kg before it, and no row says why: planned on from 75 kg. Was it for that week only, change the load.",
  );
  expect(odd).toBe(true);
  // Lifted whole again within the week there is nothing to ask.
  const again = [...away, ...on("2026-05-02", 85, 0)];
  expect(weekOf("2026-05-04", again, {}, strong).said.join()).not.toMatch(/Lighter/);
  // The next week the coach has seen it, and after time off it is eased anyway.
  const later = [...twoWeeks, ...["2026-04-30", "2026-05-07"].flatMap((iso) => on(iso, 75, 0))];
  expect(weekOf("2026-05-11", later, {}, strong).said.join()).not.toMatch(/Lighter/);
  expect(weekOf("2026-05-25", away, {}, strong).said.join()).not.toMatch(/Lighter/);
  // 85 kg of a cautious 95 kg are the chart's fifth repetition: the guard took them down.
  const weak = state(name, { ...movesAt(speed), strengthLowKg: 95 });
  expect(weekOf("2026-05-04", away, {}, weak).said.join()).not.toMatch(/Lighter/);
});

test("light threes with many repetitions left, after heavy fives, are asked about", () => {
  // Eight left of three are more than the chart's ten: they do not say that 75 kg is too much.
  const week = (left: number, before: number | null = null) =>
    weekOf("2026-05-04", [
      ...session(
        name,
        "2026-04-28",
        { sets: 5, reps: 5, loadKg: 75, markerKg: 50 },
        { repsInReserve: before },
      ),
      ...session(
        name,
        "2026-04-30",
        { sets: 5, reps: 3, loadKg: 60, markerKg: 50 },
        { repsInReserve: left },
      ),
    ]).said.join();
  expect(week(8)).toMatch("Lighter than the 75 kg before it, and no row says why");
  expect(week(7)).not.toMatch(/Lighter/);
  // Three left of the fives say that it was not, whatever the threes leave.
  expect(week(7, 3)).toMatch(/Lighter/);
  expect(week(7, 1)).not.toMatch(/Lighter/);
});

test("nobody is sent back to a load from before pain or a limit", () => {
  const slow = (over: Partial<LiftingSet> = {}) => [
    ...twoWeeks,
    ...on("2026-04-30", 75, 0.12, over),
  ];
  expect(weekOf("2026-05-04", slow()).loads[0]).toBe("3x5 85");
  expect(weekOf("2026-05-04", slow({ note: "knee pain" })).loads[0]).toBe("3x5 75");
  const limit = {
    row: 2,
    athlete: name,
    mayDo: "modified",
    by: "MG",
    pain: null,
    note: "",
  } as const;
  const availability = [
    { ...limit, from: day("2026-04-29"), until: day("2026-05-02"), site: "knee" },
  ];
  expect(weekOf("2026-05-04", slow(), { availability }).loads[0]).toBe("3x5 75");
  const unwell = state(name, {
    ...movesAt(speed),
    unwellDay: { day: day("2026-05-02"), place: "Gym E3" },
  });
  expect(weekOf("2026-05-04", slow(), {}, unwell).loads[0]).toBe("3x5 75");
});

test("an own taper of the load before an A race is the race's, and the load comes back after it", () => {
  const races = [race("2026-05-02", 10)];
  const before = [...twoWeeks, ...on("2026-04-30", 75, 0)];
  expect(weekOf("2026-05-04", before, { races })).toMatchObject({
    loads: ["3x5 85", "3x5 85"],
    said: ["75 kg last session, eased for a race: planned on from 85 kg."],
  });
});

test("a day is slow by the better of its markers, to two hundredths of where the first band begins", () => {
  const marker = (slower: number) => on("2026-05-05", 85, slower)[0]!;
  const slow = (...sets: LiftingSet[]) => slowDay(sets, lead);
  expect(slow(marker(0.045))).toBe(true);
  expect(slow(marker(0.035))).toBe(false);
  expect(slow(marker(0.08), marker(0.02))).toBe(false);
  // A wide interval does not hide that a band was passed; a narrow one is left sooner.
  const within = (low: number) => (_: "marker" | "work", kg: number) => ({
    usual: speed(kg),
    low: speed(kg) - low,
  });
  expect(slowDay([marker(0.045)], within(0.12))).toBe(true);
  expect(slowDay([marker(0.035)], within(0.04))).toBe(true);
  expect(slowDay([{ ...marker(0), repSpeeds: [], setSpeed: speed(67.5) - 0.1 }], lead)).toBe(true);
  expect(slow({ ...marker(0.1), repSpeeds: [] })).toBe(false);
  expect(slowDay([marker(0.1)], () => null)).toBe(false);
  // Without its load a set is not taken for one of no load at all.
  expect(slow({ ...marker(0), loadKg: null })).toBe(false);
  expect(slow()).toBe(false);
});

test("away again and again, nothing is taken off a load that was taken down for the last time away", () => {
  const monthly = (...loads: number[]) =>
    loads.flatMap((loadKg, at) =>
      on("2026-02-03", loadKg, 0).map((set) => ({ ...set, day: set.day + 28 * at })),
    );
  // 30 % off 85 is 59.5, on plates 57.5; the same is 30 % off again, not 40 kg.
  expect(weekOf("2026-03-02", monthly(85)).loads[0]).toBe("2x5 57.5");
  for (const before of [monthly(85, 57.5), monthly(85, 57.5, 57.5)]) {
    const monday = before.length === 8 ? "2026-03-30" : "2026-04-27";
    const { loads, said } = weekOf(monday, before);
    expect(loads[0]).toBe("2x5 57.5");
    expect(said[0]).toMatch(
      /^Off \d+ days longer than usual, and not yet back at the 85 kg of before:/,
    );
  }
  // 30 % off 100 are 70, on plates too: off again it is the same, and nothing is called off it.
  const hundred = weekOf("2026-03-30", monthly(100, 70));
  expect([hundred.loads[0], hundred.said[0]]).toEqual([
    "2x5 70",
    "Off 25 days longer than usual, and not yet back at the 100 kg of before: no more than last time.",
  ]);
});

test("longer away than the last time, more is taken off the load of before, and it is named", () => {
  // Twelve days off after 85: 76.5, on plates 75. Then four weeks off: 30 % off 85, not off 75.
  const back = [...twoWeeks, ...on("2026-05-12", 75, 0)];
  const { loads, said } = weekOf("2026-06-08", back);
  expect(loads[0]).toBe("2x5 57.5");
  expect(said[0]).toBe(
    "Off 25 days longer than usual: 30 % off the 85 kg of before, half the sets.",
  );
});

test("away again after grades were climbed, the time off takes its share of what was lifted last", () => {
  // Off from 28 April to 12 May, then a grade of 76.5 on its plates, then twelve days off: 10 % off 75.
  const climbed = [
    ...twoWeeks,
    ...["2026-05-19", "2026-05-21"].flatMap((iso) => on(iso, 67.5, 0)),
    ...["2026-05-26", "2026-05-28"].flatMap((iso) => on(iso, 75, 0)),
  ];
  const { loads, said } = weekOf("2026-06-08", climbed);
  expect(loads[0]).toBe("3x5 67.5");
  expect(said[0]).toBe("Off 9 days longer than usual: 10 % off the load before.");
});

test("half the sets of the first week back are no smaller block: the second week has all of them again", () => {
  const fives = ["2026-04-07", "2026-04-09"].flatMap((iso) =>
    session(name, iso, { sets: 5, reps: 5, loadKg: 80, markerKg: 67.5 }),
  );
  const back = (sets: number, loadKg = 65, reps = 5) =>
    ["2026-04-28", "2026-04-30"].flatMap((iso) =>
      session(name, iso, { sets, reps, loadKg, markerKg: 60 }, { repsInReserve: null }),
    );
  // 19 days less a rhythm of 3.5: 20 % off 80 kg and three of five sets; then 10 % off, on plates 70.
  expect(weekOf("2026-04-27", fives).loads[0]).toBe("3x5 62.5");
  expect(weekOf("2026-05-04", [...fives, ...back(3)]).loads).toEqual(["5x5 70", "5x5 70"]);
  // Fewer than half are what they are, and whoever was not away does three by plan.
  expect(weekOf("2026-05-04", [...fives, ...back(2)]).loads[0]).toBe("3x5 70");
  // Three sets in the second week, too, are what is done.
  const second = session(
    name,
    "2026-05-05",
    { sets: 3, reps: 5, loadKg: 65, markerKg: 60 },
    { repsInReserve: null },
  );
  expect(weekOf("2026-05-11", [...fives, ...back(3), ...second]).loads[0]).toBe("3x5 70");
  // Three threes are a block of their own, no half of fives.
  expect(weekOf("2026-05-04", [...fives, ...back(3, 65, 3)]).loads[0]).toBe("3x3 70");
  const here = ["2026-04-14", "2026-04-16", "2026-04-21", "2026-04-23"].flatMap((iso) =>
    session(name, iso, { sets: 5, reps: 5, loadKg: 80, markerKg: 67.5 }),
  );
  expect(weekOf("2026-05-04", [...fives, ...here, ...back(3, 80)]).loads[0]).toBe("3x5 80");
});

test("half the sets after a race week and time off are of the block before the race week", () => {
  const fives = (sets: number, ...days: string[]) =>
    days.flatMap((iso) => session(name, iso, { sets, reps: 5, loadKg: 80, markerKg: 67.5 }));
  // Two sets in the week of an A race on Saturday 11 April, nothing until the 28th: 20 % off, half of five.
  const before = [...fives(5, "2026-03-31", "2026-04-02"), ...fives(2, "2026-04-07")];
  const races = [race("2026-04-11", 10)];
  expect(weekOf("2026-04-27", before, { races }).loads[0]).toBe("3x5 62.5");
  const back = ["2026-04-28", "2026-04-30"].flatMap((iso) =>
    session(name, iso, { sets: 3, reps: 5, loadKg: 62.5, markerKg: 60 }, { repsInReserve: null }),
  );
  expect(weekOf("2026-05-04", [...before, ...back], { races }).loads).toEqual(["5x5 70", "5x5 70"]);
});

test("the sets of a slow day show its block: nobody goes back to five for a load of weeks ago", () => {
  const fives = ["2026-04-07", "2026-04-14"].flatMap((iso) =>
    session(name, iso, { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 }),
  );
  const slow = ["2026-04-21", "2026-04-28"].flatMap((iso) => on(iso, 80, 0.08));
  expect(weekOf("2026-05-04", [...fives, ...slow]).loads).toEqual(["3x5 85", "3x5 85"]);
});

test("fewer sets than the most at the plan make a lighter week, not fewer than of another plan", () => {
  const less = (...days: Lifted[]) => plans(days).map((one) => one.less);
  const at = (
    iso: string,
    loadKg: number,
    sets: number,
    reps = 5,
    why: AskedLess = null,
  ): Lifted => [iso, loadKg, reps, why, sets];
  // Five sets once, then three: three sets lighter are fewer than the five.
  expect(less(at("2026-05-05", 80, 5), at("2026-05-07", 80, 3), at("2026-05-12", 70, 3))).toEqual([
    null,
    null,
    "light",
  ]);
  // A slow day of three between them shows no plan of three.
  expect(
    less(at("2026-05-05", 80, 5), at("2026-05-07", 75, 3, 5, "slow"), at("2026-05-12", 70, 3)),
  ).toEqual([null, "slow", "light"]);
  // Five sets at another load, or of other repetitions, say nothing of three at this one.
  expect(less(at("2026-05-05", 75, 5), at("2026-05-07", 80, 3), at("2026-05-12", 70, 3))).toEqual([
    null,
    null,
    null,
  ]);
  expect(
    less(at("2026-05-05", 80, 5), at("2026-05-07", 80, 3, 3), at("2026-05-12", 70, 3, 3)),
  ).toEqual([null, null, null]);
});

test("the fewer sets of a lighter week, or of one eased for a race, are no smaller block", () => {
  const fives = (iso: string, loadKg: number, sets: number) =>
    session(name, iso, { sets, reps: 5, loadKg, markerKg: 60 });
  const whole = ["2026-04-14", "2026-04-21", "2026-04-28"].flatMap((iso) => fives(iso, 80, 5));
  expect(weekOf("2026-05-11", [...whole, ...fives("2026-05-05", 70, 3)]).loads[0]).toBe("5x5 80");
  const races = [race("2026-05-03", 9, { race: "R1", distanceKm: 42.195, matters: "B" })];
  const eased = [...whole, ...fives("2026-05-12", 72.5, 3)];
  expect(weekOf("2026-05-18", eased, { races }).loads[0]).toBe("5x5 80");
});
