import fc from "fast-check";
import { squadSetToSet } from "../../../src/coaching/bar-speed/squad-set-to-set";
import { squadHold } from "../../../src/coaching/hold/squad-hold";
import { presentStep } from "../../../src/coaching/next-week/present-step/present-step";
import { squadReadiness } from "../../../src/coaching/readiness/squad-readiness";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { stepRows } from "../next-week/written-squad";
import { inventedSeason, liftingSet, sessionDay, wobble } from "./invented-season";

const name = "Ilka Brandmoor";
const sessions = 10;
const asOf = sessionDay(sessions);
const { sets: squats, jumps } = inventedSeason(name, sessions);
const sets = [
  // The marker rises by a plate step a fortnight; a second lift is done as often as the squat.
  ...squats.flatMap((set, at) => [
    ...(set.set === 1
      ? [{ ...set, kind: "marker" as const, set: null, loadKg: 40 + 2.5 * Math.floor(at / 12) }]
      : []),
    set,
    liftingSet({
      day: set.day,
      exercise: "bench press",
      set: set.set,
      repSpeeds: [0.6 + 0.03 * wobble(at)],
    }),
  ]),
];

/** Rows as they would be read from a sheet in which they stand in that order. */
const standing = <Row>(rows: readonly Row[]) => rows.map((row, at) => ({ ...row, row: at + 2 }));
const said = (lifted: readonly LiftingSet[], jumped: readonly JumpAttempt[]) => {
  const index = squadIndex({ sets: standing(lifted), jumps: standing(jumped) }, asOf);
  const { notes: _, ...hold } = squadHold({
    index,
    plates: [],
    athletes: [],
    rules: usualRules,
  }).of(name);
  return {
    hold,
    day: squadReadiness({ index, plates: [] })(name, sessionDay(sessions - 1)),
    sets: ["back squat", "bench press"].map((exercise) => squadSetToSet({ index, exercise })(name)),
    step: presentStep(stepRows({ sets: standing(lifted), athlete: name, asOf })),
  };
};

test("however a sheet is sorted, sets that are numbered tell the same season, day, session and step", () => {
  const usual = said(sets, jumps);
  expect(usual.step).toMatchObject({ exercise: "back squat", markerKg: 45 });
  expect(usual.day.parts[0]).toMatchObject({ of: "back squat" });
  expect(said([...sets].reverse(), [...jumps].reverse())).toEqual(usual);
  const shuffled = <Row>(rows: readonly Row[]) =>
    fc.shuffledSubarray([...rows], { minLength: rows.length });
  fc.assert(
    fc.property(shuffled(sets), shuffled(jumps), (lifted, jumped) => {
      expect(said(lifted, jumped)).toEqual(usual);
    }),
    { numRuns: 20 },
  );
});

test("a session's numbers are not asked where two sets of the day share one, or one has none", () => {
  const day = sessionDay(0);
  const order = (numbers: readonly (number | null)[]) => {
    const rows = numbers.map((set, at) => liftingSet({ day, set, loadKg: at }));
    const { lifts } = squadIndex({ sets: standing(rows) }, asOf).of(name)!;
    return lifts.get("back squat")!.map(({ loadKg }) => loadKg);
  };
  expect(order([2, 3, 1])).toEqual([2, 0, 1]);
  expect(order([2, 3, 1, 2])).toEqual([0, 1, 2, 3]);
  expect(order([2, 3, null, 1])).toEqual([0, 1, 2, 3]);
});
