import { squadSetToSet } from "../../../src/coaching/bar-speed/squad-set-to-set";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { inventedSeason, liftingSet, sessionDay, wobble } from "../series/invented-season";

/** Five sets a session, about 1 % slower each, with 1 % of wobble. */
const session = (s: number, fall: readonly number[] = []): LiftingSet[] =>
  [1, 2, 3, 4, 5].map((set) => {
    const change = 1 - 0.01 * (set - 1) + 0.01 * wobble(5 * s + set) + (fall[set - 1] ?? 0);
    return liftingSet({
      day: sessionDay(s),
      set,
      repSpeeds: [0.7, 0.69, 0.68, 0.67, 0.66].map((v) => v * change),
    });
  });
const sessions = (count: number, last: LiftingSet[]) => [
  ...Array.from({ length: count }, (_, s) => session(s)).flat(),
  ...last,
];
const read = (sets: readonly LiftingSet[]) =>
  squadSetToSet({ index: squadIndex({ sets }, sessionDay(60)), exercise: "back squat" })(
    "Ilka Brandmoor",
  );

test("a day that breaks off at set 4 is flagged from set 4", () => {
  const result = read(sessions(8, session(8, [0, 0, 0, -0.12, -0.2])));
  expect(result).toMatchObject({
    ok: true,
    value: { leftUsualAtSet: 4, word: "slower than usual", setsUsed: 5, usualSessions: 8 },
  });
});

test("a day that gets faster is flagged too", () => {
  expect(read(sessions(8, session(8, [0, 0, 0, 0, 0.15])))).toMatchObject({
    value: { leftUsualAtSet: 5, word: "faster than usual" },
  });
});

test("an ordinary day stays within the usual, and its ratios are plain fractions", () => {
  const sets = sessions(8, session(8));
  const result = read(sets);
  if (!result.ok) throw new Error(result.refusal.code);
  const today = sets.slice(-5).map(({ repSpeeds }) => repSpeeds[0]!);
  expect(result.value.word).toBe("as usual");
  expect(result.value.secondVsFirst).toBeCloseTo(today[1]! / today[0]! - 1, 9);
  expect(result.value.lastVsFirst).toBeCloseTo(today[4]! / today[0]! - 1, 9);
  expect(result.value.usualLastVsFirst!).toBeCloseTo(-0.04, 1);
});

test.each([3, 4])("with %i earlier sessions", (count) => {
  const result = read(sessions(count, session(count)));
  expect(result).toMatchObject({ value: { word: count < 4 ? "too few rows" : "as usual" } });
});

test("sets of three against sets of five compare the first three repetitions of both", () => {
  const day = sessionDay(0);
  const result = read([
    liftingSet({ day, set: 1, repSpeeds: [0.7, 0.7, 0.7, 0.4, 0.4] }),
    liftingSet({ day, set: 2, repSpeeds: [0.63, 0.63, 0.63] }),
  ]);
  expect(result).toMatchObject({ value: { secondVsFirst: expect.closeTo(-0.1, 9) } });
});

test("sets at a lighter load after a load drop are not compared, and counted", () => {
  const last = session(8).map((set) => (set.set! >= 4 ? { ...set, loadKg: 55 } : set));
  expect(read(sessions(8, last))).toMatchObject({ value: { notCompared: 2, setsUsed: 5 } });
});

test.each([
  ["a single set", [liftingSet({ day: 1 })], "one-set", { day: 1 }],
  [
    "sets of different loads",
    [liftingSet({ day: 1 }), liftingSet({ day: 1, set: 2, loadKg: 50 })],
    "set-loads-differ",
    { day: 1 },
  ],
  [
    "another lift only",
    [liftingSet({ day: 1, exercise: "hip thrust" })],
    "no-speed-sets",
    { exercise: "back squat" },
  ],
  ["no rows", [], "athlete-not-in-sets", { athlete: "Ilka Brandmoor" }],
])("%s is refused", (_, sets, code, facts) => {
  expect(read(sets)).toEqual({ ok: false, refusal: { code, facts } });
});

test("a set in another setting is not compared, and a set that is not there keeps its number", () => {
  const day = sessionDay(0);
  const one = (set: number, speed: number, of: Partial<LiftingSet> = {}) =>
    liftingSet({ day, set, repSpeeds: [speed], ...of });
  expect(read([one(1, 0.7), one(2, 0.6, { tool: "bar tool B" }), one(4, 0.63)])).toMatchObject({
    value: {
      notCompared: 1,
      secondVsFirst: null,
      lastVsFirst: expect.closeTo(-0.1, 9),
      sets: [{ set: 4 }],
    },
  });
});

test("a marker lifted between the work sets changes none of their numbers", () => {
  const day = sessionDay(0);
  const between = liftingSet({ day, kind: "marker", set: 2, loadKg: 40, repSpeeds: [0.9] });
  const work = [1, 3].map((set) => liftingSet({ day, set, repSpeeds: [0.7] }));
  expect(read([work[0]!, between, work[1]!])).toMatchObject({ value: { sets: [{ set: 3 }] } });
});

test("a fourth set never done before is not judged, the two whose habit is known are", () => {
  const three = Array.from({ length: 6 }, (_, s) => session(s).slice(0, 3)).flat();
  expect(read([...three, ...session(6).slice(0, 4)])).toMatchObject({
    value: { word: "as usual", usualLastVsFirst: null, usualSessions: 0, leftUsualAtSet: null },
  });
});

test("the habit is that of the last twenty sessions before the day, the oldest past them forgotten", () => {
  const usual = (first: readonly number[]) => {
    const result = read([...session(0, first), ...sessions(30, session(30)).slice(5)]);
    if (!result.ok) throw new Error(result.refusal.code);
    return result.value;
  };
  expect(usual([]).usualSessions).toBe(20);
  expect(usual([0, -0.2, -0.2, -0.2, -0.2])).toEqual(usual([]));
});

test("a squad whose sets scatter widens each one's usual range, by the last twenty sessions of each", () => {
  const own = sessions(6, session(6));
  const high = (other: readonly LiftingSet[]) => {
    const result = read([...own, ...other]);
    if (!result.ok) throw new Error(result.refusal.code);
    return result.value.sets[3]!.usualHigh!;
  };
  const mates = (count: number, fall: (s: number) => readonly number[]) =>
    Array.from({ length: count }, (_, s) =>
      session(s, fall(s)).map((set) => ({ ...set, athlete: "Tomas Reyerson" })),
    ).flat();
  const even = mates(12, () => []);
  const wide = mates(12, (s) => [0, 0, 0, s % 2 ? 0.15 : -0.15, 0]);
  expect(high(wide)).toBeGreaterThan(high(even) + 0.05);
  // Their spread is that of the two alone: no fewer sessions than they have, and no more than twenty.
  const old = (count: number) => mates(count, (s) => (s === 0 ? [0, 0, 0, -0.4, 0] : []));
  expect(high(old(21))).toBe(high(old(21).filter(({ day }) => day > sessionDay(0))));
  expect(high(old(20))).toBeGreaterThan(high(mates(20, () => [])));
});

test.each([
  ["count on from the marker's", 1, [2, 3, 4]],
  ["begin anew after it", 1, [1, 2, 3]],
  ["are written beside a marker without one", null, [1, 2, 3]],
])("numbers that %s name the same second set", (_, marker, numbers) => {
  const day = sessionDay(0);
  const result = read([
    liftingSet({ day, kind: "marker", set: marker, loadKg: 40, repSpeeds: [0.9] }),
    ...[0.7, 0.63, 0.56].map((speed, at) =>
      liftingSet({ day, set: numbers[at]!, repSpeeds: [speed] }),
    ),
  ]);
  expect(result).toMatchObject({
    value: {
      secondVsFirst: expect.closeTo(-0.1, 9),
      lastVsFirst: expect.closeTo(-0.2, 9),
      sets: [{ set: 2 }, { set: 3 }],
    },
  });
});

test("of two sessions on a day the later one is told; lighter sets numbered anew are no session", () => {
  const twice = [...session(8), ...session(8, [-0.1, -0.1, -0.1, -0.1, -0.1])];
  const result = read(sessions(8, twice));
  // All sets of the second are a tenth slower, its own first too.
  expect(result).toMatchObject({ value: { word: "as usual", setsUsed: 5, leftUsualAtSet: null } });
  const breaks = [...session(8), ...session(8, [0, -0.15])];
  expect(read(sessions(8, breaks))).toMatchObject({ value: { leftUsualAtSet: 2, setsUsed: 5 } });
  const lighter = session(8)
    .slice(0, 2)
    .map((set) => ({ ...set, loadKg: 40 }));
  expect(read(sessions(8, [...session(8), ...lighter]))).toMatchObject({
    value: { setsUsed: 7, notCompared: 2 },
  });
  // A number that is the same for all sets counts nothing.
  const alike = session(8).map((set) => ({ ...set, set: 1 }));
  expect(read(sessions(8, alike))).toMatchObject({ value: { setsUsed: 5 } });
});

test("the marker set is never the first set", () => {
  const { sets } = inventedSeason("Ilka Brandmoor", 6);
  const marker = liftingSet({ day: sessionDay(5), kind: "marker", row: 1, repSpeeds: [1.2] });
  const plain = read(sets);
  expect(read([marker, ...sets])).toEqual(plain);
});
