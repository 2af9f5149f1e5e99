import { proposeLine } from "../../src/coaching/next-week/propose-line";
import type { AvailabilitySpell } from "../../src/coaching/record/availability-spell";
import type { LiftingSet } from "../../src/coaching/record/lifting-set";
import { lineReasonWords } from "../../src/words/week";
import { gymDaysWords } from "../../src/words/week-days";
import {
  athlete,
  clubRuns,
  day,
  inAll,
  race,
  session,
  squadRows,
  state,
} from "../coaching/next-week/written-squad";

/** Week of Monday 18 May: R2, a 10 km A race on Saturday 23 May at 10:00. */
const monday = day("2026-05-18");
const r2 = race("2026-05-23", 10);
const at67 = { sets: 3, reps: 5, loadKg: 67.5, markerKg: 50 };
const priya = "Priya Tellander";
const dario = "Dario Quell";
const sets = [
  ...["2026-05-05", "2026-05-07", "2026-05-12", "2026-05-14"].flatMap((iso) =>
    session(priya, iso, at67),
  ),
  ...["2026-05-05", "2026-05-07", "2026-05-12", "2026-05-14"].flatMap((iso) =>
    session(dario, iso, { sets: 3, reps: 5, loadKg: 85, markerKg: 70 }),
  ),
];
const fever: AvailabilitySpell = {
  row: 2,
  athlete: dario,
  from: monday,
  until: day("2026-06-01"),
  mayDo: "out",
  by: "Dr R. Dalgarth",
  site: "",
  pain: null,
  note: "fever",
};
const cleared: AvailabilitySpell = {
  ...fever,
  from: day("2026-06-02"),
  until: day("2026-06-29"),
  mayDo: "cleared",
  note: "in grades",
};
const propose = (name: string, week: number, over: Parameters<typeof state>[1] = {}, more = sets) =>
  proposeLine({
    athlete: athlete(name, { group: "road" }),
    name,
    state: state(name, { lastStackKg: [20, 20, 20, 10], ...over }),
    rows: squadRows({
      sets: more,
      races: [r2],
      runs: clubRuns(name, week).filter(({ day: on }) => on !== r2.day),
      availability: [fever, cleared],
    }),
    monday: week,
    asOf: week - 1,
  });

test("which day: Tuesday; Thursday 18:00 is refused, 40 h before an A race", () => {
  const found = propose(priya, monday);
  expect(found.kind).toBe("race week");
  expect(found.sessions.map((one) => one.day - monday)).toEqual([1]);
  // Tuesday 18:00 to Saturday 10:00: 6 + 3·24 + 10 hours.
  expect(found.sessions[0]!.hoursToRace).toBe(88);
  const thursday = found.days!.all[3]!.refused;
  expect(thursday).toMatchObject({ code: "before-race", hours: 40, limit: 72 });
});

test("each other day says its rule, and no second day is left beside Tuesday but Monday", () => {
  const said = gymDaysWords(propose(priya, monday).days!);
  expect(said.slice(0, 2)).toEqual(["Best: Tue 19 May.", "Second best: Mon 18 May."]);
  // Wednesday 18:00 is sixty-four hours before the start, Saturday 18:00 eight after it, Sunday thirty-two.
  expect(said).toContain("Wed 20 May to Fri 22 May refused: within 72 h before R2, an A race.");
  expect(said).toContain("Sat 23 May and Sun 24 May refused: within 48 h after R2, an A race.");
});

test("what is halved: 3×5 becomes 2×5, the load stays, contacts are half of 60", () => {
  const [one] = propose(priya, monday).sessions;
  expect(one).toMatchObject({ sets: 2, reps: 5, loadKg: 67.5, contacts: 30 });
  // Hops, drop jumps, box jumps: 2×9, 2×3, 2×3.
  expect(Object.values(one!.jumps).map(inAll)).toEqual([18, 6, 6]);
  // 20 + 20 + 20 + 10 kg: 3·4.3 + 2.9 cm.
  expect(one!.stackCm).toBe(15.8);
});

test("is Dario on a card: no sessions, `out`, and no word of the fever", () => {
  const found = propose(dario, monday);
  expect(found).toMatchObject({ not: "out", sessions: [] });
  expect(JSON.stringify(found.reasons) + found.reasons.map(lineReasonWords).join()).not.toMatch(
    /fever|dalgarth/i,
  );
});

test("an A race on the Monday after is prepared as one on Sunday: few sets, few contacts, no step on", () => {
  const week = (iso: string) =>
    proposeLine({
      athlete: athlete(priya, { group: "road" }),
      name: priya,
      state: state(priya, { strengthLowKg: 110 }),
      rows: squadRows({
        sets: [
          "2026-04-28",
          "2026-04-30",
          ...["2026-05-05", "2026-05-07", "2026-05-12", "2026-05-14"],
        ].flatMap((one) => session(priya, one, { ...at67, sets: 5 })),
        races: [race(iso, 10)],
      }),
      monday,
      asOf: monday - 1,
    });
  const shown = (iso: string) =>
    week(iso).sessions.map(({ day: on, sets: few, loadKg, contacts }) => [
      on - monday,
      few,
      loadKg,
      contacts,
    ]);
  expect(shown("2026-05-24")).toEqual([
    [0, 2, 67.5, 30],
    [2, 2, 67.5, 30],
  ]);
  expect(shown("2026-05-25")).toEqual([
    [1, 2, 67.5, 30],
    [3, 2, 67.5, 30],
  ]);
  const said = week("2026-05-25").reasons.map(lineReasonWords);
  expect(said).toContain("Tue 19 May prepares R2, an A race on Mon 25 May: sets 5 to 2.");
  expect(said).toContain("The step waits until the week after the race.");
  // On the Tuesday after only Thursday's session lies within six days of it.
  expect(shown("2026-05-26")).toEqual([
    [1, 5, 67.5, 60],
    [3, 2, 67.5, 30],
  ]);
});

test("who lifts the Tuesday after: 48 h from Saturday 10:00 is Monday 10:00, so Tuesday stands", () => {
  const after = monday + 7;
  const found = propose(priya, after, { soreness: { day: after - 1, value: 7 } }, [
    ...sets,
    ...session(priya, "2026-05-19", { ...at67, sets: 2 }),
  ]);
  expect(found.kind).toBe("week after");
  expect(found.sessions[0]!.day - after).toBe(1);
  // The race week's two sets were the plan: the block is still 3×5, its sets are back.
  expect(found.sessions[0]).toMatchObject({ sets: 3, reps: 5, loadKg: 67.5 });
  expect(found.reasons.map(lineReasonWords)).toContain("Soreness 7 on 24 May: ask first.");
  expect(found.odd).toBe(true);
});

test("Dario back from 2 June: 20 % off and half the sets, then a grade a week", () => {
  const back = propose(dario, day("2026-06-01"));
  // 14 May to 2 June: 19 days less a rhythm of 3.5. 85 − 20 % = 68, on plates 67.5; 3 sets become 2.
  expect(back.sessions[0]).toMatchObject({
    day: day("2026-06-02"),
    sets: 2,
    reps: 5,
    loadKg: 67.5,
  });
  expect(back.reasons.map(lineReasonWords)[0]).toBe(
    "Off 16 days longer than usual: 20 % off the load before, half the sets.",
  );
  // The marker of 70 stands in the warm-up: it is no heavier than what he comes back at.
  expect(back.sessions[0]!.markerKg).toBe(67.5);
  const first = ["2026-06-02", "2026-06-04"].flatMap((iso) =>
    session(dario, iso, { sets: 2, reps: 5, loadKg: 67.5, markerKg: 67.5 }),
  );
  // Cautious strength 106 kg: 75 is 70.8 %, 12 repetitions by Epley's line, seven in reserve.
  const guard = { strengthLowKg: 106 };
  const second = propose(dario, day("2026-06-08"), guard, [...sets, ...first]);
  // 10 % off 85 is 76.5, on plates 75.
  expect(second.sessions[0]).toMatchObject({ sets: 3, reps: 5, loadKg: 75, markerKg: 70 });
  const poor = propose(dario, day("2026-06-08"), guard, [
    ...sets,
    ...first.map((set) => ({ ...set, movedWell: set.kind === "work" ? false : null })),
  ]);
  expect(poor.sessions[0]!.loadKg).toBe(67.5);
});

test("after a marathon: seven days nothing, then 10 % off and half the sets until the tenth day", () => {
  const hamid = "Hamid Sorley";
  const at75 = { sets: 3, reps: 5, loadKg: 75, markerKg: 57.5 };
  const after = (week: string, eased: readonly LiftingSet[] = []) =>
    proposeLine({
      athlete: athlete(hamid, { group: "marathon", sessionsAWeek: 1 }),
      name: hamid,
      state: state(hamid, { strengthLowKg: 95 }),
      rows: squadRows({
        sets: [
          ...["2026-04-14", "2026-04-21"].flatMap((iso) => session(hamid, iso, at75)),
          ...eased,
        ],
        races: [race("2026-04-26", 9, { race: "R1", distanceKm: 42.195 })],
      }),
      monday: day(week),
      asOf: day(week) - 1,
    });
  // Sunday 26 April 9:00 and 168 h is Sunday 3 May 9:00: of that week only Sunday evening is left.
  const first = after("2026-04-27");
  expect(first.days!.all.filter(({ refused }) => refused === null).map((one) => one.day)).toEqual([
    day("2026-05-03"),
  ]);
  // 10 % off 75 is 67.5; half of three sets is two.
  expect(first.sessions[0]).toMatchObject({ sets: 2, reps: 5, loadKg: 67.5 });
  const second = after("2026-05-04");
  expect(second.sessions[0]).toMatchObject({ day: day("2026-05-05"), sets: 2, loadKg: 67.5 });
  expect(second.reasons.map(lineReasonWords)[0]).toBe(
    "9 days after a marathon: 10 % off, half the sets, until usual loads again.",
  );
  // Who lifted those on the Sunday does them again: nothing is taken off twice.
  const sunday = session(hamid, "2026-05-03", { ...at75, sets: 2, loadKg: 67.5 });
  expect(after("2026-05-04", sunday).sessions[0]).toMatchObject({ sets: 2, reps: 5, loadKg: 67.5 });
  // Three sets of a 5×5 were its half already.
  const three = session(hamid, "2026-05-03", { ...at75, loadKg: 67.5 });
  expect(after("2026-05-04", three).sessions[0]).toMatchObject({ sets: 3, reps: 5, loadKg: 67.5 });
});

test("a session away on a bar in pounds leaves the loads on this gym's bar and plates", () => {
  const away = session(priya, "2026-05-14", { ...at67, loadKg: 66.2 }, { barKg: 20.41165665 });
  const found = propose(priya, monday + 7, {}, [...sets, ...away]);
  expect(found.sessions[0]!.barKg).toBe(20);
  expect((found.sessions[0]!.loadKg / 2.5) % 1).toBe(0);
});
