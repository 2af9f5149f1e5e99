import { streamSums } from "../../../../src/coaching/hold/evidence/stream-sums";
import type { AthleteSeason } from "../../../../src/coaching/hold/squad-seasons";
import { watchedSeason } from "../../../../src/coaching/hold/watched-season";
import { lastSeasonLevels } from "../../../../src/coaching/hold/yardsticks/last-season-level";

/** Athletes with a level last season and one in this season's baseline, read without error. */
const squad = (...levels: [before: number, now: number][]) =>
  levels.map(
    ([before, now]) =>
      ({
        measures: [{ kind: "jump height", earlier: [Array.from({ length: 20 }, () => before)] }],
        values: [Array.from({ length: 6 }, () => now)],
        baselineSessions: 6,
      }) as unknown as AthleteSeason,
  );
const levelsOf = (seasons: readonly AthleteSeason[]) => {
  const levels = lastSeasonLevels(seasons, () => 4);
  return seasons.map((season) => levels.get(season)![0]!);
};
const even = (count: number) =>
  Array.from({ length: count }, (_, a): [number, number] => [100, 103 + (a % 2 ? 5 : -5)]);

test("what the squad moved between the seasons is expected of each athlete", () => {
  for (const level of levelsOf(squad(...even(12)))) expect(level!.mean).toBeCloseTo(103, 9);
});

test("the more athletes move apart between seasons, the less the last one says", () => {
  const [wide] = levelsOf(squad(...even(12)));
  const [near] = levelsOf(squad(...even(12).map(([b]): [number, number] => [b, 103])));
  expect(wide!.variance).toBeGreaterThan(20);
  expect(near!.variance).toBeLessThan(6);
  expect(near!.variance).toBeGreaterThan(4);
});

test("what the last season says is worth its own error, the squad's spread and that of its mean", () => {
  // Moves of 8 and −2: squares 12·25 over 11. Errors of 4 %: 16/20 of last season, 16/6 of the baseline.
  const spread = (12 * 25) / 11 - (16 / 20 + 16 / 6);
  for (const level of levelsOf(squad(...even(12)))) {
    expect(level!.variance).toBeCloseTo(spread + 16 / 20 + spread / 12, 9);
  }
});

test("ten athletes are enough, and what came after the baseline does not matter", () => {
  const ten = squad(...even(10));
  expect(levelsOf(ten).every((level) => level !== null)).toBe(true);
  const gone = ten.map((season) => ({ ...season, values: [[...season.values[0]!, 40, 40, 40]] }));
  expect(levelsOf(gone)).toEqual(levelsOf(ten));
});

test("four readings last season and three of the baseline are enough, missed ones are none", () => {
  const ten = squad(...even(10));
  const eleventh = (before: number, ...now: number[]) =>
    levelsOf([
      ...ten,
      {
        measures: [{ kind: "jump height", earlier: [Array.from({ length: before }, () => 100)] }],
        values: [now],
        baselineSessions: 6,
      } as unknown as AthleteSeason,
    ])[10];
  const missing = Number.NaN;
  expect(eleventh(4, 103, 103, missing, 103, missing, missing)).not.toBeNull();
  expect(eleventh(3, 103, 103, 103, 103, 103, 103)).toBeNull();
  expect(eleventh(4, 103, 103, missing, missing, missing, missing)).toBeNull();
});

test("an athlete is far off beyond two SDs of the level and of the baseline's own mean", () => {
  const still = Array.from({ length: 14 }, (): [number, number] => [100, 100]);
  // Variances about 4 + 16/20 + 4/15 and 16/6: two SDs together are 5.6, of the level alone 4.5.
  expect(levelsOf(squad(...still, [100, 95]))[14]).not.toBeNull();
  expect(levelsOf(squad(...still, [100, 93.5]))[14]).toBeNull();
});

test("an athlete far off last season, and a squad of fewer than ten, are told nothing", () => {
  const still = Array.from({ length: 14 }, (): [number, number] => [100, 100]);
  const levels = levelsOf(squad(...still, [100, 80]));
  expect(levels[0]).not.toBeNull();
  expect(levels[14]).toBeNull();
  expect(levelsOf(squad(...even(9))).every((level) => level === null)).toBe(true);
});

test("last season's level stands before the first session, worth as many readings as it is sure", () => {
  const values = [1, 2, 3, 2, 1, 3, 2, 2];
  const of = (level: { mean: number; variance: number } | null) => {
    const season = watchedSeason([{ values, squadError: 4, level }], 6, 20);
    return { season, sums: streamSums(season, 7, season.measures) };
  };
  const { season, sums } = of({ mean: 5, variance: 8 });
  const error = season.measures[0]!.errors[7]!;
  expect(sums.weight[0]).toBeCloseTo(error ** 2 / 8, 12);
  // The baseline's mean is 2.
  expect(sums.score[0]).toBeCloseTo(((error ** 2 / 8) * (5 - 2)) / error, 12);
  const without = of(null).sums;
  expect([without.weight[0], without.score[0]]).toEqual([0, 0]);
  expect(sums.weight[8]! - sums.weight[0]!).toBeCloseTo(without.weight[8]!, 12);
});
