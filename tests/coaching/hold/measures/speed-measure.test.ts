import { lineFit } from "../../../../src/coaching/bar-speed/line-fit";
import { usualLineSettings as settings } from "../../../../src/coaching/bar-speed/line-settings";
import {
  commonest,
  logScale,
  stretchedBaseline,
} from "../../../../src/coaching/hold/measures/season-measure";
import {
  liftSeason,
  ownLine,
  speedMeasure,
} from "../../../../src/coaching/hold/measures/speed-measure";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { speedSetReader } from "../../../../src/coaching/series/speed-set";
import { liftingSet } from "../../series/invented-season";

const from = 20_600;
const given = { from, baselineTo: from + 14 };
const prior = { speed: 1.4, sd: 0.35 };
/** A set so many days after the season's first, on the line 1.4 − 0.01·load times a share. */
const at = (after: number, loadKg: number | null = 60, share = 1, of: Partial<LiftingSet> = {}) =>
  liftingSet({
    day: from + after,
    loadKg,
    repSpeeds: [share * (1.4 - 0.01 * (loadKg ?? 60))],
    ...of,
  });
const seasonOf = (...sets: readonly LiftingSet[]) => {
  const read = speedSetReader();
  return liftSeason(
    sets.map((set) => read(set)!),
    given,
  );
};
const measureOf = (...sets: readonly LiftingSet[]) =>
  speedMeasure(seasonOf(...sets)!, prior, settings);
const baseline = [at(0, 60), at(7, 70), at(14, 80)];

test("a session is so many percent off the baseline's line at its load, of the speed at the mean load", () => {
  const measure = measureOf(...baseline, at(21, 70, 0.9), at(28, 50, 1.1))!;
  // The line's speed at 70 kg, the mean of the baseline, is 0.7 m/s; at 50 kg 0.9.
  const percents = [...measure.percents];
  expect(percents.map(([day]) => day - from)).toEqual([0, 7, 14, 21, 28]);
  expect(percents.map(([, percent]) => percent)).toEqual(
    [0, 0, 0, -10, (100 * 0.09) / 0.7].map((percent) => expect.closeTo(percent, 6)),
  );
  expect(measure.valueAt(-10)).toBeCloseTo(0.63, 9);
  expect(measure.plainPercent(-10)).toBe(-10);
  expect(measure).toMatchObject({ kind: "bar speed", of: "back squat", stepPercent: 0 });
});

test("a load far from the baseline's mean carries the slope's own doubt", () => {
  const season = seasonOf(...baseline, at(21, 90), at(28, 70))!;
  const { slopeVariance } = lineFit(season.baselineRows, null, prior, settings)!;
  const { loadErrors } = speedMeasure(season, prior, settings)!;
  const perKg = (100 * Math.sqrt(slopeVariance)) / 0.7;
  expect(loadErrors!.get(from + 21)).toBeCloseTo(20 * perKg, 9);
  expect(loadErrors!.get(from)).toBeCloseTo(-10 * perKg, 9);
  expect(loadErrors!.get(from + 28)).toBeCloseTo(0, 9);
});

test("sets before the season, without a load or in another setting are no sets of it", () => {
  const season = seasonOf(
    at(-70, 65),
    at(-65, null),
    at(-60, 65, 1, { tool: "other" }),
    ...baseline,
    at(20, null),
    at(21, 70, 1, { tool: "other" }),
    at(22, 75),
  )!;
  expect(season.rows.map(({ day }) => day - from)).toEqual([0, 7, 14, 22]);
  expect(season.baselineRows.map(({ day }) => day - from)).toEqual([0, 7, 14]);
  expect(season.earlier.map(({ day }) => day - from)).toEqual([-70]);
  expect(season.notes).toMatchObject([{ code: "setting-changed", facts: { sessions: 1 } }]);
});

test("earlier seasons are read by the same kind of set, in runs without a long gap", () => {
  const mark = { kind: "marker", loadKg: 40, repSpeeds: [1] } as const;
  const before = [at(-200), at(-70, 60, 0.9), at(-63, 60), at(-63, 40, 1, mark)];
  const byWork = measureOf(...before, ...baseline)!;
  expect(byWork.earlier).toEqual([
    [expect.closeTo(0, 6)],
    [expect.closeTo((-100 * 0.08) / 0.7, 6), expect.closeTo(0, 6)],
  ]);
  const marked = baseline.map((set) => ({ ...set, ...mark }));
  const byMarker = measureOf(...before, ...marked, ...baseline)!;
  expect(byMarker.earlier).toHaveLength(1);
  expect(byMarker.earlier[0]).toHaveLength(1);
});

test("a lift without a loaded set in the season is none, with one setting all sets are of it", () => {
  expect(seasonOf(at(-9), at(3, null))).toBeNull();
  expect(seasonOf(at(30))!.rows).toHaveLength(1);
});

test("loads all alike leave the slope to the prior; a line that does not fall holds no season", () => {
  expect(measureOf(at(0), at(7), at(14))!.percents.get(from)).toBeCloseTo(0, 9);
  const rising = [40, 60, 80].map((loadKg, i) =>
    at(7 * i, loadKg, 1, { repSpeeds: [1.5 + 0.01 * loadKg] }),
  );
  expect(measureOf(...rising)).toBeNull();
  expect(measureOf(at(0, 0), at(7, 0), at(14, 0))).toBeNull();
  // Light sets that are far quicker than the heavy first ones: the line is under zero at those.
  const bent = [0, 7, 14].flatMap((after) =>
    [
      [120, 0.03],
      [40, 1.2],
      [50, 0.7],
      [60, 0.4],
    ].map(([loadKg, speed], i) => at(after, loadKg, 1, { set: i + 1, repSpeeds: [speed!] })),
  );
  expect(measureOf(...bent)).toBeNull();
});

test("the squad learns from the surer of two lines, the baseline's or the season's with its drift", () => {
  const long = Array.from({ length: 12 }, (_, s) => at(7 * s, 60 + 5 * (s % 3), 1 - 0.005 * s));
  const { slope } = ownLine(seasonOf(...long)!, settings)!;
  expect(slope).toBeLessThan(0);
  const { baselineRows, rows } = seasonOf(...long)!;
  const alone = lineFit(baselineRows, null, null, settings)!;
  expect(rows).toHaveLength(12);
  expect(ownLine(seasonOf(...long)!, settings)!.interceptVariance).toBeLessThan(
    alone.interceptVariance,
  );
  expect(ownLine(seasonOf(...baseline)!, settings)).toEqual(
    lineFit(seasonOf(...baseline)!.baselineRows, null, null, settings),
  );
});

test("the baseline runs on to a value's third reading, and is never cut short", () => {
  expect(stretchedBaseline([from, from + 10, from + 30], given)).toEqual({
    from,
    baselineTo: from + 30,
  });
  expect(stretchedBaseline([from, from + 10, from + 14], given)).toEqual(given);
  expect(stretchedBaseline([from, from + 30], given)).toEqual(given);
});

test("the value most often seen, the earlier of two seen equally often", () => {
  expect(commonest(["b", "a", "a", "b"])).toBe("b");
  expect(commonest(["b", "a", "a"])).toBe("a");
  expect(commonest([null, null, 30])).toBeNull();
  expect(commonest([])).toBeUndefined();
});

test("on the log scale equal ratios are equal steps, and the way back is the value itself", () => {
  const more = logScale();
  const less = logScale(true);
  expect(more.percentOf(42) - more.percentOf(40)).toBeCloseTo(100 * Math.log(1.05), 9);
  expect(less.percentOf(0.21) - less.percentOf(0.2)).toBeCloseTo(-100 * Math.log(1.05), 9);
  expect([more.valueAt(more.percentOf(42)), less.valueAt(less.percentOf(0.21))]).toEqual([
    expect.closeTo(42, 9),
    expect.closeTo(0.21, 9),
  ]);
  expect(more.plainPercent(100 * Math.log(1.05))).toBeCloseTo(5, 9);
});
