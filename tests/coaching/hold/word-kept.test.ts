import {
  type DirectedEvidence,
  type StepEvidence,
  stepEvidence,
} from "../../../src/coaching/hold/evidence/step-evidence";
import { wordOfSeason } from "../../../src/coaching/hold/evidence/word-of-season";
import { usualHoldSettings } from "../../../src/coaching/hold/hold-settings";
import { watchedSeason } from "../../../src/coaching/hold/watched-season";

const limit = 10;
const baseline = 6;
const one = (total: number, recent: number): DirectedEvidence => ({
  total,
  recent,
  byOnset: new Float64Array(20),
  onset: 8,
});
/** The word after the last of some sessions whose evidence for a fall and a rise is given. */
const word = (evidence: readonly (readonly [fall: number, rise: number])[], recent = [-2, 2]) => {
  const known: (StepEvidence | undefined)[] = [];
  for (const [at, [fall, rise]] of evidence.entries()) {
    known[baseline + 1 + at] = { low: one(fall, recent[0]!), high: one(rise, recent[1]!) };
  }
  const values = Array.from({ length: baseline + 1 + evidence.length }, (_, s) => s % 2);
  const season = watchedSeason([{ values, squadError: 4 }], baseline, 30);
  return wordOfSeason(season, limit, season.sessions - 1, known);
};
const falls = (...totals: number[]) => word(totals.map((total) => [total, 0])).word;
const rises = (...totals: number[]) => word(totals.map((total) => [0, total])).word;

test("a change is named at the limit, not before", () => {
  expect([falls(4, 9.9), falls(4, 10)]).toEqual(["holding", "slipping"]);
  expect([rises(4, 9.9), rises(4, 10)]).toEqual(["holding", "rising"]);
});

test("with evidence both ways the stronger is named, a fall where they are alike", () => {
  expect([word([[12, 13]]), word([[13, 12]]), word([[12, 12]])].map((told) => told.word)).toEqual([
    "rising",
    "slipping",
    "slipping",
  ]);
});

test("once named it is kept down to 0.7 of the limit, and not a step further", () => {
  expect([falls(12, 8), falls(12, 7), falls(12, 6.9)]).toEqual(["slipping", "slipping", "holding"]);
  expect([rises(12, 8), rises(12, 7), rises(12, 6.9)]).toEqual(["rising", "rising", "holding"]);
});

test("once dropped it must reach the limit again", () => {
  expect(falls(12, 6, 8)).toBe("holding");
  expect(falls(12, 6, 8, 10)).toBe("slipping");
});

test("evidence between the two limits that never reached the upper one names nothing", () => {
  expect(falls(8, 8, 8, 8)).toBe("holding");
});

test("a fall that gave way to a rise is not named again while only the rise stood all along", () => {
  // The fall was dropped; the rise never reached its limit.
  expect(
    word([
      [12, 9],
      [3, 9],
    ]).word,
  ).toBe("holding");
  expect(
    word([
      [9, 12],
      [9, 3],
    ]).word,
  ).toBe("holding");
});

test("latest rows back at the baseline name nothing, whatever the evidence before them", () => {
  expect(word([[12, 0]], [-0.01, 0.01]).word).toBe("holding");
  // A quarter of an error is not yet off it, a little more is.
  expect([-0.25, -0.26].map((recent) => word([[12, 0]], [recent, 0]).word)).toEqual([
    "holding",
    "slipping",
  ]);
  expect([0.25, 0.26].map((recent) => word([[0, 12]], [0, recent]).word)).toEqual([
    "holding",
    "rising",
  ]);
});

test("a rise is not named while there is as much or more for a fall, whose latest rows came back", () => {
  expect([word([[13, 12]], [0, 2]), word([[12, 12]], [0, 2])].map((told) => told.word)).toEqual([
    "holding",
    "holding",
  ]);
  expect(word([[11, 12]], [0, 2]).word).toBe("rising");
});

test("the onset told is that of the latest evidence", () => {
  expect(
    word([
      [12, 0],
      [8, 0],
    ]),
  ).toMatchObject({ word: "slipping", since: 8 });
});

test("the latest rows are held against the baseline as it counts, one wild reading of it cut", () => {
  // Mean 5; the wild reading counts 1.8 errors over it, the others all of what they lie under it.
  // The last four readings are the latest, the one before them is not.
  const values = [0, 0, 0, 0, 0, 30, 7, 9, 9, 9, 9];
  const season = watchedSeason([{ values, squadError: 3 }], baseline, 30);
  const error = season.measures[0]!.errors[10]!;
  const counted = (5 * (-5 / error) + 1.8) / 6;
  const { high } = stepEvidence(season, 10);
  expect(high.recent).toBeCloseTo(4 / error - counted, 9);
});

test("of three readings since the baseline all are the latest, and none of the baseline", () => {
  const season = watchedSeason([{ values: [1, -1, 1, -1, 1, -1, 4, 4, 4], squadError: 3 }], 6, 30);
  const { high } = stepEvidence(season, 8);
  expect(high.recent).toBeCloseTo(4 / season.measures[0]!.errors[8]!, 9);
});

/** A reading is always worth four: the typical error is the least allowed, and nothing is shared. */
const plain = { ...usualHoldSettings, leastError: 4, betweenShare: 0 };
const even = [1, -1, 1, -1, 1, -1];

test("from an onset without a change nothing is heard, though the rows on either side are over the baseline", () => {
  const season = watchedSeason(
    [{ values: [...even, 2, 2, 2, 2, 2, 2, 1, 1, 1, 1], squadError: 4 }],
    6,
    30,
    plain,
  );
  // Before the thirteenth session the mean is 1, and so it is from it on.
  const { low, high } = stepEvidence(season, 15);
  expect(high.byOnset[12]).toBe(0);
  expect(low.byOnset[12]).toBe(0);
  expect(high.byOnset[6]).toBeGreaterThan(0);
});

test("no onset of a rise is told where every row since is lower than those before it", () => {
  const season = watchedSeason(
    [{ values: [...even, -2, -3, -4, -5, -6], squadError: 4 }],
    6,
    30,
    plain,
  );
  const { low, high } = stepEvidence(season, 10);
  expect(high).toMatchObject({ total: 0, onset: -1, recent: 0 });
  expect(low.onset).toBe(low.byOnset.indexOf(Math.max(...low.byOnset)));
});

test("which rows are the latest is read from the values that speak for the change most", () => {
  const fallen = { values: [...even, -8, -8, -8, -8, -8, -8], squadError: 4 };
  // Lower for a while, by now over the baseline: of its last four rows as much as it was under it.
  const back = { values: [...even, -3, -3, -3, 1, 1, 1], squadError: 4 };
  const recent = (...series: { values: number[]; squadError: number }[]) =>
    stepEvidence(watchedSeason(series, 6, 30, plain), 11).low.recent;
  // Cut to 1.8 errors.
  expect(recent(fallen)).toBeCloseTo(-1.8, 9);
  expect(recent(back)).toBeCloseTo(0, 9);
  expect(recent(back, fallen)).toBeLessThan(-0.7);
  expect(recent(fallen, back)).toBeLessThan(-0.7);
});
