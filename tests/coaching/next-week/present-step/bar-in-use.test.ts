import { barInUse } from "../../../../src/coaching/next-week/present-step/bar-in-use";
import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { lineReasonWords } from "../../../../src/words/week";
import { athlete, day, plates, session, squadRows, state } from "../written-squad";

const name = "Tomas Reyerson";
/** One work set on so many days, one after another from a day on. */
const sets = (from: number, count: number, over: Partial<LiftingSet>) =>
  Array.from({ length: count }, (_, at) => {
    const [, work] = session(name, "2026-01-01", { sets: 1, reps: 5, loadKg: 75, markerKg: 50 });
    return { ...work!, day: from + at, ...over };
  });
const bar = (...lists: LiftingSet[][]) => {
  const { barKg, barBeforeKg } = barInUse(lists.flat(), 20);
  return [barKg, barBeforeKg];
};

test("a new bar is in use from its second day on, one day on another bar is none", () => {
  const twenty = sets(0, 12, { barKg: 20 });
  expect(bar(twenty, sets(12, 1, { barKg: 15 }))).toEqual([20, null]);
  expect(bar(twenty, sets(12, 2, { barKg: 15 }))).toEqual([15, 20]);
  expect(bar(twenty, sets(12, 13, { barKg: 15 }))).toEqual([15, null]);
  // A day on another bar and back again.
  expect(bar(twenty, sets(12, 1, { barKg: 15 }), sets(13, 1, { barKg: 20 }))).toEqual([20, null]);
});

test("one day in the gym used most tells of no new bar", () => {
  const home = Array.from({ length: 6 }, () => sets(9, 1, { barKg: 15, gym: "home" })).flat();
  const elsewhere = ["camp", "club"].map((gym) => sets(0, 5, { barKg: 20, gym }));
  expect(bar(...elsewhere, home)).toEqual([20, null]);
});

test("days in another gym change nothing", () => {
  const home = sets(0, 12, { barKg: 20, gym: "home" });
  const away = sets(12, 4, { barKg: 15, gym: "camp" });
  expect(bar(home, away)).toEqual([20, null]);
  expect(bar(home, away, sets(16, 2, { barKg: 15, gym: "home" }))).toEqual([15, 20]);
});

test("where the last days differ it is the bar of most of the last sixty sets, without a bar the one given", () => {
  const mixed = [...sets(0, 1, { barKg: 15 }), ...sets(1, 1, { barKg: 20 })];
  const of = (count: number) =>
    bar(sets(-100, 70, { barKg: 15 }), sets(-30, count, { barKg: 20 }), mixed);
  expect([of(29), of(31)]).toEqual([
    [15, null],
    [20, null],
  ]);
  expect(bar(sets(0, 3, { barKg: null }))).toEqual([20, null]);
  expect(bar(sets(0, 1, { barKg: 15 }))).toEqual([15, null]);
});

test("the week's plates are for the new bar, and it is said", () => {
  const on = (iso: string, barKg: number) =>
    session(name, iso, { sets: 5, reps: 3, loadKg: 75, markerKg: 50 }).map((set) => ({
      ...set,
      barKg,
    }));
  const before = ["2026-04-16", "2026-04-21", "2026-04-23"].flatMap((iso) => on(iso, 20));
  const rows = [...before, ...["2026-04-28", "2026-04-30"].flatMap((iso) => on(iso, 15))];
  const { sessions, reasons } = proposeLine({
    athlete: athlete(name),
    name,
    state: state(name),
    rows: squadRows({ sets: rows, plates }),
    monday: day("2026-05-04"),
    asOf: day("2026-05-03"),
  });
  // Three weeks at 75 kg, a step on: (77.5 − 15)/2 = 31.25 a side.
  expect(sessions[0]).toMatchObject({ loadKg: 77.5, barKg: 15, plates: [25, 5, 1.25] });
  expect(reasons.map(lineReasonWords)).toContain(
    "Plates are for the 15 kg bar of the last two sessions; before, it was 20 kg.",
  );
});
