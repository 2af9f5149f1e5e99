import { evidenceLimit } from "../../../../src/coaching/hold/evidence/evidence-limit";
import { seasonLimit } from "../../../../src/coaching/hold/evidence/season-limit";
import { visibleFall } from "../../../../src/coaching/hold/evidence/visible-fall";
import { usualHoldSettings } from "../../../../src/coaching/hold/hold-settings";
import { watchedSeason } from "../../../../src/coaching/hold/watched-season";

test.each([1, 2, 3])("of %i values, fewer false flags ask for more evidence", (measures) => {
  const [rare, usual, often] = [0.05, 0.1, 0.2].map((rate) => seasonLimit(rate, 18, measures));
  expect(rare!).toBeGreaterThan(1.5 * usual!);
  expect(usual!).toBeGreaterThan(1.5 * often!);
});

test("a season with more sessions to be wrong in asks for more evidence", () => {
  const limits = [8, 12, 18, 26, 40].map((after) => seasonLimit(0.1, after, 3));
  expect([...limits].sort((a, b) => a - b)).toEqual(limits);
  expect(new Set(limits).size).toBe(5);
});

test("at the eighteen sessions it was found for, the limit is its factor times (1.95 − 3.5/18)", () => {
  const limits = [1, 2, 3].map((measures) => seasonLimit(0.1, 18, measures));
  expect(limits).toEqual(
    [1.95, 1.85, 2.15].map((factor) => expect.closeTo(factor * (1.95 - 3.5 / 18), 12)),
  );
  // Twice the sessions: as much again as the power 0.4 and the shorter rest allow.
  expect(seasonLimit(0.1, 36, 3)).toBeCloseTo(2.15 * 2 ** 0.4 * (1.95 - 3.5 / 36), 12);
  expect(seasonLimit(0.05, 18, 3)).toBeCloseTo(2.15 * 2 ** 1.09 * (1.95 - 3.5 / 18), 12);
});

test("measures that err together show a fall later, and more sessions show a smaller one", () => {
  const season = (sessions: number, betweenMeasures: number) => {
    const values = Array.from({ length: sessions }, (_, s) => (s % 2 ? 3 : -3));
    const series = { values, squadError: 4 };
    return watchedSeason([series, series], 6, 20, { ...usualHoldSettings, betweenMeasures });
  };
  const apart = visibleFall(season(10, 0))!;
  expect(visibleFall(season(10, 0.8))!).toBeGreaterThan(1.2 * apart);
  expect(visibleFall(season(24, 0))!).toBeLessThan(apart);
});

test("a session without any followed value neither shows a fall sooner nor later", () => {
  const of = (...values: number[]) =>
    visibleFall(watchedSeason([{ values, squadError: 4 }], 6, 20));
  const read = [3, -3, 3, -3, 3, -3, 3, -3];
  expect(of(...read, Number.NaN, Number.NaN)).toBeCloseTo(of(...read)!, 12);
});

test("the limit before the usual settings' own: (1.95 − 3.5/n)·(0.1/rate)^0.6", () => {
  expect(evidenceLimit(0.1, 10)).toBeCloseTo(1.6, 12);
  expect(evidenceLimit(0.05, 10)).toBeCloseTo(1.6 * 2 ** 0.6, 12);
});
