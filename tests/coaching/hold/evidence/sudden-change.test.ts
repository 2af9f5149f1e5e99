import { onsetRange } from "../../../../src/coaching/hold/evidence/onset-range";
import { suddenChange } from "../../../../src/coaching/hold/evidence/sudden-change";
import { usualHoldSettings } from "../../../../src/coaching/hold/hold-settings";
import { squadHold } from "../../../../src/coaching/hold/squad-hold";
import { watchedSeason } from "../../../../src/coaching/hold/watched-season";
import { usualRules } from "../../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import {
  inventedSeason,
  jumpAttempt,
  liftingSet,
  sessionDay,
  wobble,
} from "../../series/invented-season";

const missing = Number.NaN;
/** Six baseline sessions with about 3 % of wobble, then what follows. */
const season = (...after: number[]) =>
  watchedSeason([{ values: [1.5, -2, 2.5, -1, 1, -2, ...after], squadError: 3 }], 6, 12);

test("two readings running far under the baseline are a fall at once", () => {
  expect(suddenChange(season(0, -14, -15))).toEqual({
    measure: 0,
    word: "slipping",
    since: 7,
    lastBefore: 6,
  });
});

test("the first two sessions after the baseline are enough", () => {
  expect(suddenChange(season(-14, -15))).toMatchObject({ since: 6, lastBefore: 5 });
});

test("two far over it are a rise, and those between count with them though some are missing", () => {
  expect(suddenChange(season(9, missing, 14, missing, 15))).toEqual({
    measure: 0,
    word: "rising",
    since: 6,
    lastBefore: 5,
  });
});

test.each([
  ["one reading", [0, -15]],
  ["one on either side", [-15, 15]],
  ["two that are not far enough", [-8, -8]],
  ["two far off on the mean, the first too near", [-7, -30]],
  ["two far off on the mean, the second too near", [-30, -7]],
  ["two that came back", [-15, -15, 0, 0]],
  ["two over three errors off, and under four on the mean", [-10, -10]],
  ["a single session after the baseline", [-15]],
])("%s: no sudden change", (_, after) => {
  expect(suddenChange(season(...after))).toBeNull();
});

test("the typical error is that before the change, which the change would widen", () => {
  const read = season(0, -12.5, -13);
  const { errors } = read.measures[0]!;
  expect(12.75 / errors[6]!).toBeGreaterThan(4);
  expect(12.75 / errors[8]!).toBeLessThan(4);
  expect(suddenChange(read)).toMatchObject({ since: 7 });
});

test("a far reading of the baseline's own counts neither as one of two nor as the first of the change", () => {
  const wild = (...after: number[]) =>
    watchedSeason([{ values: [0, 0, 0, 0, 0, -15, ...after], squadError: 3 }], 6, 12);
  expect(suddenChange(wild(-20))).toBeNull();
  expect(suddenChange(wild(-20, -20))).toMatchObject({ since: 6, lastBefore: 5 });
});

test("just three errors each and four on the mean are enough, and just two belong to the change", () => {
  // The typical error is the least allowed, 4, and the baseline's mean nought.
  const off = (...after: number[]) =>
    watchedSeason([{ values: [1, -1, 1, -1, 1, -1, ...after], squadError: 4 }], 6, 12, {
      ...usualHoldSettings,
      leastError: 4,
    });
  expect(suddenChange(off(0, -12, -20))).toMatchObject({ since: 7 });
  expect(suddenChange(off(0, -20, -12))).toMatchObject({ since: 7 });
  expect(suddenChange(off(0, -8, -12, -20))).toMatchObject({ since: 7 });
  expect(suddenChange(off(0, -7.9, -12, -20))).toMatchObject({ since: 8 });
});

test("of two measures the one that is further off is named", () => {
  const values = (last: number) => [1.5, -2, 2.5, -1, 1, -2, 0, last, last];
  const both = watchedSeason(
    [values(-16), values(-20)].map((one) => ({ values: one, squadError: 3 })),
    6,
    12,
  );
  expect(suddenChange(both)).toMatchObject({ measure: 1, since: 7 });
  const other = watchedSeason(
    [values(-20), values(-16)].map((one) => ({ values: one, squadError: 3 })),
    6,
    12,
  );
  expect(suddenChange(other)).toMatchObject({ measure: 0 });
  const alike = watchedSeason(
    [values(-16), values(-16)].map((one) => ({ values: one, squadError: 3 })),
    6,
    12,
  );
  expect(suddenChange(alike)).toMatchObject({ measure: 0 });
});

test("an injury shows in a test that is seldom taken, with its date and a note", () => {
  const { jumps } = inventedSeason("Ilka Brandmoor", 9);
  // Hops tested at nine sessions; the last two a third lower.
  const hops = jumps
    .filter(({ test }) => test === "box jump")
    .map((jump, s) => ({ ...jump, test: "hop", heightCm: s < 7 ? 30 + wobble(s) : 20 }));
  const lone = { sets: [], jumps: hops };
  const hold = squadHold({
    index: squadIndex(lone, sessionDay(9)),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).of("Ilka Brandmoor");
  expect(hold.word).toBe("slipping");
  expect(hold.sinceDay).toBe(sessionDay(7));
  expect(hold.value).toMatchObject({ kind: "jump height", of: "hop" });
  expect([hold.sinceFrom, hold.sinceTo]).toEqual([sessionDay(6), sessionDay(7)]);
  expect(hold.notes).toContainEqual({
    code: "sudden-change",
    facts: { kind: "jump height", of: "hop" },
  });
});

test("the range of onsets holds the middle four fifths of the evidence", () => {
  expect(onsetRange(Float64Array.from([0, 1, 8, 1, 0]))).toEqual([1, 2]);
  expect(onsetRange(Float64Array.from([0, 0.9, 8, 1.1, 0]))).toEqual([2, 3]);
  expect(onsetRange(Float64Array.from([0, 0, 5]))).toEqual([2, 2]);
  expect(onsetRange(new Float64Array(4))).toBeNull();
});

test("a season far longer than the rules' asks for a new baseline", () => {
  const sets = Array.from({ length: 70 }, (_, s) =>
    liftingSet({ day: sessionDay(2 * s), repSpeeds: [0.7 * (1 + 0.02 * wobble(s))] }),
  );
  const hold = squadHold({
    index: squadIndex({ sets, jumps: [jumpAttempt({ day: sessionDay(0) })] }, sessionDay(140)),
    plates: [],
    athletes: [],
    rules: { ...usualRules, seasonWeeks: 16 },
  }).of("Ilka Brandmoor");
  const long = hold.notes.find(({ code }) => code === "long-season");
  expect(long?.facts.weeks).toBeGreaterThan(32);
});
