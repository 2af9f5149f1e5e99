import { squadLines } from "../../../src/coaching/bar-speed/squad-lines";
import { squadSetToSet } from "../../../src/coaching/bar-speed/squad-set-to-set";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { liftingSet, sessionDay } from "../series/invented-season";

const day = sessionDay(0);
/** A set of which only its one figure was written down. */
const figure = (set: number | null, setSpeed: number | null, over: Partial<LiftingSet> = {}) =>
  liftingSet({ day, set, repSpeeds: [], setSpeed, setSpeedIs: "best rep", ...over });
const read = (sets: readonly LiftingSet[]) => {
  const index = squadIndex({ sets }, sessionDay(9));
  return squadSetToSet({ index, exercise: "back squat" })("Ilka Brandmoor");
};

test("sets kept as one figure are compared by that figure", () => {
  // 0.665 / 0.70 = 0.95 and 0.63 / 0.70 = 0.9.
  expect(read([figure(1, 0.7), figure(2, 0.665), figure(3, 0.63)])).toMatchObject({
    ok: true,
    value: {
      setsUsed: 3,
      secondVsFirst: expect.closeTo(-0.05, 9),
      lastVsFirst: expect.closeTo(-0.1, 9),
      notCompared: 0,
    },
  });
});

test("sets without a number count in the order they stand in", () => {
  const result = read([figure(null, 0.7), figure(null, 0.665), figure(null, 0.63)]);
  if (!result.ok) throw new Error(result.refusal.code);
  expect(result.value.sets.map(({ set }) => set)).toEqual([2, 3]);
  expect(result.value.secondVsFirst).toBeCloseTo(-0.05, 9);
});

test("a set without a number after numbered ones goes on with the session, it begins none", () => {
  const sets = [figure(1, 0.7), figure(2, 0.665), figure(null, 0.63)];
  expect(read(sets)).toMatchObject({
    value: { setsUsed: 3, lastVsFirst: expect.closeTo(-0.1, 9), sets: [{ set: 2 }, { set: 3 }] },
  });
});

test("repetitions are not compared with a figure for the whole set", () => {
  const whole = figure(2, 0.66, { setSpeedIs: "mean of reps" });
  const first = liftingSet({ day, set: 1, repSpeeds: [0.7, 0.69] });
  expect(read([first, whole, { ...first, set: 3, repSpeeds: [0.63, 0.621] }])).toMatchObject({
    value: { notCompared: 1, secondVsFirst: null, lastVsFirst: expect.closeTo(-0.1, 9) },
  });
});

test("a repetition that was not read is left out of both sets, and none in common compares nothing", () => {
  const reps = (set: number, repSpeeds: readonly (number | null)[]) =>
    liftingSet({ day, set, repSpeeds });
  // Of the second set only the third repetition was read in both: 0.6 against 0.5.
  expect(read([reps(1, [0.7, null, 0.5]), reps(2, [null, 0.9, 0.6])])).toMatchObject({
    value: { secondVsFirst: expect.closeTo(0.2, 9) },
  });
  expect(read([reps(1, [0.7, null]), reps(2, [null, 0.9])])).toMatchObject({
    ok: false,
    refusal: { code: "set-loads-differ" },
  });
});

test("no repetition in common and a figure of one of the two alone compare nothing", () => {
  const reps = (set: number, repSpeeds: readonly (number | null)[], setSpeed: number | null) =>
    liftingSet({ day, set, repSpeeds, setSpeed });
  for (const [first, second] of [
    [null, 0.8],
    [0.8, null],
    [0, 0.8],
    [0.8, 0],
  ] as const) {
    expect(read([reps(1, [0.7, null], first), reps(2, [null, 0.9], second)])).toMatchObject({
      refusal: { code: "set-loads-differ" },
    });
  }
  expect(read([reps(1, [0.7, null], 0.8), reps(2, [null, 0.9], 0.76)])).toMatchObject({
    value: { secondVsFirst: expect.closeTo(-0.05, 9) },
  });
});

test("a speed of nought in the one repetition both have compares nothing", () => {
  const reps = (set: number, repSpeeds: readonly number[]) => liftingSet({ day, set, repSpeeds });
  for (const [first, second] of [
    [[0.7], [0, 0.6]],
    [[0, 0.6], [0.7]],
  ] as const) {
    expect(read([reps(1, first), reps(2, second)])).toMatchObject({
      refusal: { code: "set-loads-differ" },
    });
  }
});

test("a day of marker sets alone is no session of the lift", () => {
  const marker = (on: number) => liftingSet({ day: on, set: null, kind: "marker", loadKg: 40 });
  expect(read([marker(day), marker(sessionDay(1))])).toMatchObject({
    refusal: { code: "no-speed-sets" },
  });
  const after = read([figure(1, 0.7), figure(2, 0.665), marker(sessionDay(1))]);
  expect(after).toMatchObject({ ok: true, value: { day } });
});

test("sets whose load is not written down are neither in the line nor taken for another setting", () => {
  const sets = [60, 70, 80].map((loadKg, at) =>
    liftingSet({ day: sessionDay(at), loadKg, repSpeeds: [1.4 - 0.0115 * loadKg] }),
  );
  const away = liftingSet({ day: sessionDay(0), set: 2, loadKg: 60, gym: "away" });
  const unloaded = liftingSet({ day: sessionDay(2), set: 2, loadKg: null });
  const line = squadLines({
    index: squadIndex({ sets: [...sets, away, unloaded] }, sessionDay(9)),
    exercise: "back squat",
  })("Ilka Brandmoor");
  expect(line).toMatchObject({ ok: true, value: { setsUsed: 3, otherSettingSets: 1 } });
});
