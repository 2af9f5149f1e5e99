import { ladder } from "../../../src/coaching/blocks/ladder";
import { nextBlock } from "../../../src/coaching/blocks/next-block";
import { plateStepKg } from "../../../src/coaching/blocks/plate-loading";
import { chartShare, mostReps, singleFromSet } from "../../../src/coaching/blocks/repetition-load";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { heightStep, testDays } from "../../../src/coaching/jumps/test-day";
import { jumpValues } from "../../../src/coaching/readiness/jump-values";
import { accept, refuse } from "../../../src/outcome";
import { jumpAttempt } from "../series/invented-season";

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
  expect(plateStepKg([{ row: 2, massKg: 5, thicknessCm: 2, owned: 2 }])).toBe(10);
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

test("only a day written 2026-05-12 is one", () => {
  expect(["2026-05-12", "2026-13-01", "2026-02-30", "12 May", ""].map(dayFromIso)).toEqual([
    20_585,
    null,
    null,
    null,
    null,
  ]);
});

test("a test day takes its first drop height, and a plate not measured gives no height", () => {
  const [one] = testDays(
    [
      jumpAttempt({ day: 1, dropCm: 30, heightCm: 30, contactS: 0.2 }),
      jumpAttempt({ day: 1, dropCm: 40, heightCm: 50, contactS: 0.4 }),
      jumpAttempt({ day: 1, dropCm: 30, stackKg: [99] }),
      jumpAttempt({ day: 1, dropCm: 30, contactS: 0 }),
    ],
    [],
  );
  expect(one).toMatchObject({
    attempts: 4,
    heightsNotRead: 1,
    dropCm: 30,
    heightCm: 30,
    contactS: 0.2,
    reactiveStrength: expect.closeTo(1.5, 9),
  });
});

const heights = (...cm: (number | null)[]) =>
  testDays(
    cm.map((heightCm, day) =>
      jumpAttempt({ day, heightCm, contactS: heightCm === null ? 0.2 : null }),
    ),
    [],
  );

test("heights on a grid have its step; too few, off the grid or all alike have none", () => {
  expect(heightStep(heights(40, 42, 44, 42, 48, 40))).toBe(2);
  expect(heightStep(heights(40, 42, 44, 42, 48))).toBeNull();
  expect(heightStep(heights(40, 42, 43, 42, 47.5, 40, 44.1))).toBeNull();
  expect(heightStep(heights(40, 40, 40, 40, 40, 40))).toBeNull();
  expect(heightStep(heights(null, null))).toBeNull();
});

test("a day's jump is compared by height, failing that by contact, with days from the same drop", () => {
  const days = heights(40, null, 44, 42);
  const tall = jumpValues(days, days[3]);
  expect(tall?.unit).toBe("cm");
  expect(tall?.dated.map(({ day }) => day)).toEqual([0, 2, 3]);
  expect(tall?.valueAt(tall.dated[0]!.value)).toBeCloseTo(40, 9);
  const quick = jumpValues(days, days[1]);
  expect([quick?.unit, quick?.dated.length]).toEqual(["s", 1]);
  expect(quick?.valueAt(quick.dated[0]!.value)).toBeCloseTo(0.2, 9);
  expect(jumpValues(days, undefined)).toBeNull();
  const [silent] = testDays([jumpAttempt({ day: 9 })], []);
  expect(jumpValues([silent!], silent)).toBeNull();
  const [other] = testDays([jumpAttempt({ day: 3, heightCm: 40, dropCm: 50 })], []);
  expect(jumpValues(days, other)).toBeNull();
  const [zero] = testDays([jumpAttempt({ day: 3, heightCm: 0 })], []);
  expect(jumpValues([zero!], zero)).toBeNull();
});
