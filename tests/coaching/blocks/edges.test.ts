import { fineStep, gymStepKg } from "../../../src/coaching/blocks/gym-step";
import { ladder } from "../../../src/coaching/blocks/ladder";
import { nextBlock } from "../../../src/coaching/blocks/next-block";
import { plateStepKg, platesASide } from "../../../src/coaching/blocks/plate-loading";
import { chartShare, mostReps, singleFromSet } from "../../../src/coaching/blocks/repetition-load";
import type { StepSize } from "../../../src/coaching/blocks/step-up";
import { accept, refuse } from "../../../src/outcome";

test("a best single is the load itself, a set to the limit counts by Epley's line, ten at most", () => {
  expect(singleFromSet(100, 1)).toEqual(accept(100));
  // 90 kg five times: 90·(1 + 5/30) = 105 kg (Epley 1985).
  expect(singleFromSet(90, 5)).toEqual(accept(105));
  expect(singleFromSet(0, 5)).toEqual(refuse("load-impossible", { loadKg: 0 }));
  for (const reps of [0, 11, 2.5])
    expect(singleFromSet(90, reps)).toEqual(refuse("reps-not-charted", { reps, most: 10 }));
});

test("the chart is read row by row and refused outside it", () => {
  expect([1, 5, 10].map(chartShare)).toEqual([1, 0.87, 0.75].map(accept));
  for (const reps of [0, 11, 1.5])
    expect(chartShare(reps)).toEqual(refuse("reps-not-charted", { reps, most: 10 }));
  expect([1.01, 1, 0.95, 0.75, 0.5].map(mostReps)).toEqual([0, 1, 2, 10, 30]);
  expect(mostReps(0.94)).toBeCloseTo(2.5, 9);
});

test("without plates there is no step", () => {
  expect(plateStepKg([])).toBe(0);
  expect(plateStepKg([{ row: 2, massKg: 5, thicknessCm: 2, owned: 1 }])).toBe(0);
  const five = { row: 2, massKg: 5, thicknessCm: 2, owned: 2 };
  expect(plateStepKg([five])).toBe(10);
  // A single plate makes no pair, one of no mass no step.
  for (const massKg of [0, 1.25])
    expect(plateStepKg([five, { ...five, massKg, owned: massKg === 0 ? 2 : 1 }])).toBe(10);
});

test("the smallest change planned is the lightest pair, but no less than the step of a gym of pounds", () => {
  const step = (...masses: number[]) =>
    gymStepKg(masses.map((massKg) => ({ row: 2, massKg, thicknessCm: 2, owned: null })));
  expect([step(), step(20, 0.5), step(20, 1), step(20, 1.25), step(20, 5)]).toEqual([
    2.5, 2.5, 2.5, 2.5, 10,
  ]);
  // Plates of 2.5 lb: 5 lb is 2.268 kg.
  expect(step(20, 2.5 * 0.45359237)).toBeCloseTo(5 * 0.45359237, 9);
});

test("on a bar so light that 2.5 kg is too large a step, lighter pairs make it; no other step changes", () => {
  const of = (loadKg: number, size: Partial<StepSize>, ...masses: number[]) =>
    fineStep(
      { stepKg: 2.5, largestStep: 0.05, wanted: 0.025, ...size },
      loadKg,
      masses.map((massKg) => ({ row: 2, massKg, thicknessCm: 2, owned: null })),
    ).stepKg;
  // 2.5 % of 39.5 kg is 0.99: two pairs of 0.5 kg. 5 % are 1.98.
  expect(of(39.5, {}, 20, 0.25)).toBe(1);
  expect(of(39.5, { wanted: 0.05 }, 20, 0.25)).toBe(1.5);
  expect(of(39.5, { wanted: 0 }, 20, 0.25)).toBe(0.5);
  // 5 % of 50 kg are the usual step; of 39.5 kg no pair of 2 kg.
  expect(of(50, {}, 20, 0.25)).toBe(2.5);
  expect(of(49.5, {}, 20, 0.25)).toBe(1.5);
  expect([of(39.5, {}, 20, 1), of(40, {}, 20, 1)]).toEqual([2.5, 2]);
  expect([of(39.5, {}), of(39.5, {}, 20, 1.25)]).toEqual([2.5, 2.5]);
});

test("plates listed in any order are put on heaviest first, and the lightest pair is the step", () => {
  const plates = [1.25, 20, 0.5, 10].map((massKg) => ({
    row: 2,
    massKg,
    thicknessCm: 2,
    owned: null,
  }));
  expect(platesASide(83.5, 20, plates)).toEqual(accept([20, 10, 1.25, 0.5]));
  expect(platesASide(21, 20, plates)).toEqual(accept([0.5]));
  expect(plateStepKg(plates)).toBe(1);
});

test("a ladder without a guard climbs step by step; under a hopeless guard there is none", () => {
  const given = { block: { sets: 5, reps: 5 }, loadKg: 70, stepKg: 2.5, largestStep: 0.1 };
  const climbed = ladder({ ...given, guardKg: null });
  expect(climbed.steps.map(({ loadKg, reserve }) => [loadKg, reserve])).toEqual([
    [70, null],
    [72.5, null],
    [75, null],
    [77.5, null],
  ]);
  expect(ladder({ ...given, guardKg: 1 })).toEqual({ steps: [], lowered: "start" });
});

test("no load leaves two repetitions in reserve at a strength of one kilogram", () => {
  const all = { movedWell: true, volumeDone: true, heldSpeed: true };
  const given = { block: { sets: 5, reps: 5 }, loadKg: 70, stepKg: 2.5, ...all };
  expect(nextBlock({ ...given, strengthKg: 1 })).toEqual(
    refuse("reserve-never", { loadKg: 70, strengthKg: 1 }),
  );
});
