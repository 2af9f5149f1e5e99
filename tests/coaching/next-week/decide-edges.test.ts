import {
  assistanceLoad,
  isAssistance,
} from "../../../src/coaching/next-week/exercises/assistance-load";
import { dropHeight } from "../../../src/coaching/next-week/jumps/drop-height";
import { dayBands } from "../../../src/coaching/next-week/on-the-day/day-bands";
import type { DayPlan } from "../../../src/coaching/next-week/on-the-day/day-decision";
import { decideToday } from "../../../src/coaching/next-week/on-the-day/decide-today";
import { presentStep } from "../../../src/coaching/next-week/present-step/present-step";
import {
  contactReasons,
  cutReasons,
  swapReasons,
} from "../../../src/coaching/next-week/reasons/line-reasons";
import type { Race } from "../../../src/coaching/record/race";
import { accept, refuse } from "../../../src/outcome";
import { lineReasonWords } from "../../../src/words/week";
import { jumpAttempt } from "../series/invented-season";
import { plan } from "./day-plan";
import { day, plates, race, session, stepRows } from "./written-squad";

const slow = { kind: "by eye", word: "slow" } as const;

test("a squad without a device is told the load before the set, and no speed to keep", () => {
  expect(decideToday({ kind: "nothing" }, { ...plan, usualSpeed: null })).toEqual(
    accept({ kind: "before the set", keepsFrom: null, loadKg: 80, builtKg: null }),
  );
});

test("a load, a step or a speed that cannot be is refused, whatever was seen", () => {
  expect(decideToday(slow, { ...plan, plannedKg: 0 })).toEqual(
    refuse("load-impossible", { loadKg: 0 }),
  );
  expect(decideToday({ kind: "nothing" }, { ...plan, stepKg: 0 })).toEqual(
    refuse("step-impossible", { stepKg: 0 }),
  );
  expect(decideToday({ kind: "speeds", sets: [[6]] }, plan)).toEqual(
    refuse("speed-impossible", { speed: 6 }),
  );
});

test("a mean midway between two hundredths counts as the faster one, as a coach would round it", () => {
  // 0.58 and 0.59 are 0.585: 0.59, 0.05 under usual, which keeps the plan; 0.58 would not.
  expect(decideToday({ kind: "speeds", sets: [[0.58, 0.59]] }, plan)).toMatchObject({
    value: { kind: "as planned" },
  });
  expect(decideToday({ kind: "speeds", sets: [[0.58, 0.58]] }, plan)).toMatchObject({
    value: { kind: "lighter", loadKg: 75 },
  });
});

test("without an interval, or with one that lies above the usual speed, the bands judge alone", () => {
  const seen = (speed: number) => ({ kind: "speeds", sets: [[speed, speed]] }) as const;
  for (const lowSpeed of [0.7, null]) {
    const kindAt = (speed: number) => {
      const decided = decideToday(seen(speed), { ...plan, lowSpeed });
      return decided.ok && decided.value.kind;
    };
    // Usual 0.64: up to 0.05 slower the plan, up to 0.10 half the share off at once, more once it is seen twice.
    expect([0.64, 0.63, 0.59, 0.58, 0.54, 0.53].map(kindAt)).toEqual([
      "as planned",
      "as planned",
      "as planned",
      "lighter",
      "lighter",
      "repeat the marker",
    ]);
  }
});

test("a plan that these plates do not make is told with the load that they make", () => {
  const gym = { plates, barKg: 20 };
  const toldAt = (plannedKg: number) => {
    const decided = decideToday({ kind: "by eye", word: "usual" }, { ...plan, plannedKg, gym });
    return decided.ok && "builtKg" in decided.value && decided.value.builtKg;
  };
  // A pair of 1.25 kg is the smallest step; under the bar no plate makes a load.
  expect([81, 80, 82.5, 15].map(toldAt)).toEqual([80, null, null, null]);
});

test("nothing is lighter than the bar alone, with plates listed and without, nor than the first step", () => {
  for (const gym of [
    { plates, barKg: 20 },
    { plates: [], barKg: 20 },
  ]) {
    expect(decideToday(slow, { ...plan, plannedKg: 20, gym })).toMatchObject({
      value: { kind: "nothing lighter", loadKg: 20, slower: null },
    });
    // 10 % off 21.25 kg is 19.1.
    expect(decideToday(slow, { ...plan, plannedKg: 21.25, gym })).toMatchObject({
      value: { kind: "lighter", loadKg: 20, plates: [] },
    });
    expect(decideToday(slow, { ...plan, plannedKg: 20, stepKg: 20, gym }).ok).toBe(true);
  }
  for (const plannedKg of [10, 20])
    expect(decideToday(slow, { ...plan, plannedKg, stepKg: 20 })).toEqual(
      refuse("step-too-large", { stepKg: 20, loadKg: plannedKg }),
    );
});

test("the gym's plates decide what lighter is, and which stand on a side", () => {
  // 10 % off 80 is 72; the nearest under it with these pairs on a 20 kg bar is 70: 25 a side.
  const pairs = plates.filter(({ massKg }) => massKg >= 5);
  expect(decideToday(slow, { ...plan, gym: { plates: pairs, barKg: 20 } })).toMatchObject({
    value: { kind: "lighter", loadKg: 70, plates: [25], share: 0.125 },
  });
});

test("bands for paper leave every speed in exactly one, and none where no lighter load is", () => {
  // 10 % off 80 kg is 70, half of it 75, as whole steps of 2.5 kg.
  const bands = (over: Partial<DayPlan>) =>
    dayBands({ ...plan, usualSpeed: 0.64, ...over } as never);
  const [planned, light, clear, none] = [
    { from: 0.59, to: null, loadKg: 80, share: 0, repeatFrom: null },
    { from: 0.54, to: 0.58, loadKg: 75, share: expect.closeTo(0.0625, 9), repeatFrom: null },
    { from: 0.49, to: 0.53, loadKg: 70, share: expect.closeTo(0.125, 9), repeatFrom: null },
    { from: null, to: 0.48, loadKg: null, share: 0, repeatFrom: null },
  ];
  expect(bands({ lowSpeed: 0.58 })).toEqual([planned, light, clear, none]);
  // Where his interval is not known, what would take the whole share off is repeated first.
  expect(bands({})).toEqual([planned, light, { ...clear, repeatFrom: 0.49 }, none]);
  // Inside his interval, and past a band: repeated first. At 0.55 both agree.
  expect(bands({ lowSpeed: 0.55 })).toEqual([planned, { ...light, repeatFrom: 0.56 }, clear, none]);
  // A steady athlete, out of his interval and short of a band.
  expect(bands({ lowSpeed: 0.6 })).toEqual([
    { ...planned, from: 0.61 },
    { ...light, to: 0.6, repeatFrom: 0.59 },
    clear,
    none,
  ]);
  expect(bands({ lowSpeed: 0.45 })).toEqual([
    planned,
    { ...light, repeatFrom: 0.54 },
    { ...clear, repeatFrom: 0.49 },
    { ...none, repeatFrom: 0.46 },
  ]);
  expect(bands({ plannedKg: 10, stepKg: 20 })).toEqual([]);
  // So slow a marker that no speed is written for it: nothing to band.
  expect(bands({ usualSpeed: 0.04 })).toEqual([]);
});

test("assistance is read from that athlete's own later sets with a load, one leg apart from two", () => {
  const set = (iso: string, exercise: string, loadKg: number | null, over = {}) => ({
    ...session("Joss Whitterby", iso, { sets: 1, reps: 6, loadKg: 0, markerKg: 40 })[1]!,
    exercise,
    loadKg,
    ...over,
  });
  const rows = [
    set("2026-05-07", "leg press", 85),
    set("2026-05-07", "leg press", 90),
    set("2026-05-05", "leg press", 80),
    set("2026-05-07", "single-leg press", 50),
    set("2026-05-08", "leg press", null),
    set("2026-05-08", "leg press", 60, { kind: "warm-up" }),
    set("2026-05-08", "leg press", 200, { athlete: "Priya Tellander" }),
    set("2026-05-12", "leg press", 100),
  ];
  const last = (exercise: string, iso = "2026-05-10") =>
    assistanceLoad(rows, "Joss Whitterby", exercise, day(iso));
  expect([last("leg press", "2026-05-12"), last("leg press", "2026-05-11")]).toEqual([100, 90]);
  expect([last("leg press"), last("single-leg press, other leg")]).toEqual([90, 50]);
  expect([last("plank"), last("back squat"), last("leg press, no weight")]).toEqual([
    null,
    null,
    null,
  ]);
});

test("a drop is that athlete's own, however the name is typed, and of no later day", () => {
  const drop = (athlete: string, iso: string, dropCm: number | null) =>
    jumpAttempt({ athlete, day: day(iso), test: "drop jump", dropCm, contactS: 0.2 });
  const rows = [
    drop("joss  whitterby", "2026-05-05", 30),
    drop("Priya Tellander", "2026-05-07", 60),
    drop("Joss Whitterby", "2026-05-08", null),
    drop("Joss Whitterby", "2026-05-12", 40),
  ];
  const at = (iso: string) => dropHeight(rows, "Joss Whitterby", day(iso), "trained", plates).cm;
  expect([at("2026-05-10"), at("2026-05-12")]).toEqual([30, 40]);
});

test("sets cut for a race do not make a block of fewer sets, nor end its weeks", () => {
  const sets = (iso: string, count: number) =>
    session("Joss Whitterby", iso, { sets: count, reps: 5, loadKg: 85, markerKg: 67.5 });
  const rows = [sets("2026-04-28", 5), sets("2026-05-05", 5), sets("2026-05-12", 3)].flat();
  const step = (raceWeek: boolean) =>
    presentStep(
      stepRows({
        sets: rows,
        athlete: "Joss Whitterby",
        asOf: day("2026-05-17"),
        plannedSets: (block, on) => (raceWeek && on >= day("2026-05-11") ? 3 : block.sets),
      }),
    );
  expect(step(true)).toMatchObject({
    block: { sets: 5, reps: 5 },
    weeksHeld: 3,
    firstTurn: true,
    volumeDone: true,
  });
  // In an ordinary week three sets are the next block.
  expect(step(false)).toMatchObject({
    block: { sets: 3, reps: 5 },
    weeksHeld: 1,
    firstTurn: false,
  });
});

test("a week without a session swaps nothing", () => {
  const who = { mayDo: "full", not: null, limits: [], noJumps: false, site: "" } as const;
  expect(swapReasons([], who)).toEqual([]);
});

test("a share that ends on a step is taken off to that step, not to the one under it", () => {
  // A tenth off 100 kg is 90, four steps of 2.5 kg.
  expect(decideToday(slow, { ...plan, plannedKg: 100 })).toMatchObject({
    value: { kind: "lighter", loadKg: 90 },
  });
});

test("where the coach takes no share off, a slow day by eye keeps the plan", () => {
  expect(decideToday(slow, { ...plan, usualDrop: 0 })).toMatchObject({
    value: { kind: "as planned", loadKg: 80 },
  });
});

test("a set without a speed says nothing beside one that has them", () => {
  const seen = (...sets: number[][]) => decideToday({ kind: "speeds", sets }, plan);
  expect(seen([], [0.58, 0.58])).toEqual(seen([0.58, 0.58]));
});

test("without a table of plates no plates are named, the load goes by the step alone", () => {
  expect(decideToday(slow, { ...plan, gym: { plates: [], barKg: 20 } })).toMatchObject({
    value: { kind: "lighter", loadKg: 70, plates: [] },
  });
});

test("with a table of plates the load is one they make, not one of steps alone", () => {
  // A tenth off 85 kg is 76.5: 75 by steps of 2.5 kg, 70 where no pair is lighter than 5 kg.
  const fives = plates.filter(({ massKg }) => massKg >= 5);
  const load = (gym: Parameters<typeof decideToday>[1]["gym"]) =>
    decideToday(slow, { ...plan, plannedKg: 85, gym });
  expect(load(null)).toMatchObject({ value: { loadKg: 75 } });
  expect(load({ barKg: 20, plates: fives })).toMatchObject({ value: { loadKg: 70 } });
});

test("a slow first set inside a wide usual range is lifted once more, and then the band counts", () => {
  expect(
    decideToday({ kind: "speeds", sets: [[0.58, 0.58]] }, { ...plan, lowSpeed: 0.5 }),
  ).toMatchObject({
    value: { kind: "repeat the marker", ifSame: { kind: "lighter", loadKg: 75 } },
  });
});

test("sets left that cannot be are told back", () => {
  expect(decideToday(slow, { ...plan, setsLeft: 21 })).toEqual(
    refuse("sets-left-impossible", { setsLeft: 21 }),
  );
});

test("whoever never lifts slower than usual is asked to repeat a set that is", () => {
  // An interval that ends at 0.64 itself: 0.62 is no band's speed, and yet out of it.
  const seen = { kind: "speeds", sets: [[0.62, 0.62]] } as const;
  expect(decideToday(seen, { ...plan, lowSpeed: 0.64 })).toMatchObject({
    value: { kind: "repeat the marker" },
  });
  expect(decideToday(seen, plan)).toMatchObject({ value: { kind: "as planned" } });
});

test("three sets of three in a race week are no fives cut short, though the load is the same", () => {
  const sets = (iso: string, count: number, reps: number) =>
    session("Joss Whitterby", iso, { sets: count, reps, loadKg: 85, markerKg: 67.5 });
  const rows = [...sets("2026-05-05", 5, 5), ...sets("2026-05-12", 3, 3)];
  const step = presentStep(
    stepRows({
      sets: rows,
      athlete: "Joss Whitterby",
      asOf: day("2026-05-17"),
      plannedSets: (block, on) => (on >= day("2026-05-11") ? 3 : block.sets),
    }),
  );
  expect(step).toMatchObject({ block: { sets: 3, reps: 3 }, weeksHeld: 1 });
});

test("sets cut for a race are told from how many to how many, as many as before not at all", () => {
  const cut = (from: number, near: Race | null = null) =>
    cutReasons(from, { day: day("2026-05-15"), sets: 3 }, near);
  expect(cut(5)).toEqual([{ code: "race-week", facts: { from: 5, to: 3 } }]);
  expect(cut(3)).toEqual([]);
  const [early] = cut(5, race("2026-05-18", 10, { race: "R2, heats" }));
  expect(lineReasonWords(early!)).toBe(
    "Fri 15 May prepares R2, an A race on Mon 18 May: sets 5 to 3.",
  );
});

test("however little is taken off a slow day, it is a step", () => {
  expect(decideToday(slow, { ...plan, usualDrop: 1e-12 })).toMatchObject({
    value: { kind: "lighter", loadKg: 77.5 },
  });
});

test("the speed that keeps the plan is a hundredth over the low end", () => {
  const keepsFrom = (lowSpeed: number) => {
    const told = decideToday({ kind: "nothing" }, { ...plan, lowSpeed });
    return told.ok && told.value.kind === "before the set" ? told.value.keepsFrom : null;
  };
  expect([0.6, 0.6004, 0.606, 0.5].map(keepsFrom)).toEqual([0.61, 0.61, 0.62, 0.59]);
});

test("0.10 m/s slower takes half the share off, 0.15 the whole, 0.16 is no day for heavy work", () => {
  const twice = (speed: number) =>
    decideToday({ kind: "speeds", sets: [[speed], [speed]] }, { ...plan, usualSpeed: 0.64 });
  expect(twice(0.54)).toMatchObject({ value: { kind: "lighter", loadKg: 75 } });
  expect(twice(0.53)).toMatchObject({ value: { kind: "lighter", loadKg: 70 } });
  expect(twice(0.49)).toMatchObject({ value: { kind: "lighter", loadKg: 70 } });
  expect(twice(0.48)).toMatchObject({ value: { kind: "no heavy work" } });
});

test("before the set the cell tells the first band of the card, also where little or nothing is taken off", () => {
  const gym = { plates: [], barKg: 20 };
  for (const over of [
    {},
    { lowSpeed: 0.55 },
    { lowSpeed: 0.6 },
    { usualDrop: 0 },
    { plannedKg: 20, gym },
    { plannedKg: 20, gym, lowSpeed: 0.6 },
  ]) {
    const given = { ...plan, usualSpeed: 0.64, ...over };
    const told = decideToday({ kind: "nothing" }, given);
    const [first] = dayBands(given);
    const slowest = first!.repeatFrom === null ? first!.from : "repeated first";
    expect(told).toMatchObject({ value: { keepsFrom: slowest } });
  }
});

test("bands reach down to the slowest speed there is, 0.05 m/s", () => {
  const bands = (usualSpeed: number) => dayBands({ ...plan, usualSpeed });
  expect(bands(0.05)).toEqual([{ from: null, to: null, loadKg: 80, share: 0, repeatFrom: null }]);
  // 0.16 under 0.21 m/s.
  expect(bands(0.21).at(-1)).toMatchObject({
    from: null,
    to: 0.05,
    loadKg: null,
    repeatFrom: null,
  });
});

test("jumps are called halved only where there are any", () => {
  expect(contactReasons([])).toEqual([]);
});

test("a set at the low end of its interval has left it, a hundredth over it has not", () => {
  const kind = (speed: number, lowSpeed: number) => {
    const told = decideToday({ kind: "speeds", sets: [[speed, speed]] }, { ...plan, lowSpeed });
    return told.ok && told.value.kind;
  };
  expect([kind(0.6, 0.6), kind(0.61, 0.6)]).toEqual(["repeat the marker", "as planned"]);
  // Where it begins at the usual speed itself, that speed has not left it.
  expect(kind(0.64, 0.64)).toBe("as planned");
});

test("repetitions just 0.15 m/s apart are no reason to repeat a set, further apart they are", () => {
  const kind = (...reps: number[]) => {
    const told = decideToday({ kind: "speeds", sets: [reps] }, { ...plan, usualSpeed: 0.65 });
    return told.ok && told.value.kind;
  };
  // 0.65 − 0.5 is a hair over 0.15 to the last digit, 0.66 − 0.51 is not.
  expect([kind(0.65, 0.5), kind(0.66, 0.51)]).toEqual(["lighter", "lighter"]);
  expect(kind(0.66, 0.5)).toBe("repeat the marker");
});

const written =
  "split squat, splitsquat, RFE split-squats, rear-foot elevated squat, rear foot raised, rearfoot, walking lunge, step up, step-ups, stepups, Stepup, seated twist, plank, dead bug, dead-bugs, deadbug, leg press, leg-press, legpress";

test("assistance is known by the words coaches write for it, and no main lift is", () => {
  for (const lift of written.split(", ")) expect([lift, isAssistance(lift)]).toEqual([lift, true]);
  for (const lift of ["back squat", "press", "deadlift", "step upper", "bench press"])
    expect([lift, isAssistance(lift)]).toEqual([lift, false]);
});
