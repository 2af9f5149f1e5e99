import { changeFactor } from "../../../../src/coaching/hold/evidence/change-factor";
import { seasonLimit } from "../../../../src/coaching/hold/evidence/season-limit";
import { usualHoldSettings } from "../../../../src/coaching/hold/hold-settings";
import { earlierRuns } from "../../../../src/coaching/hold/measures/earlier-runs";
import { ownTypicalErrors } from "../../../../src/coaching/hold/yardsticks/own-typical-error";

test("readings of earlier seasons are split where more than eight weeks lie between", () => {
  const readings = [0, 7, 14, 70, 127].map((day) => ({ day, percent: day / 7 }));
  expect(earlierRuns(readings)).toEqual([[0, 1, 2, 10], [127 / 7]]);
  expect(earlierRuns([])).toEqual([]);
});

test("last season's wobble counts like this season's, the step between seasons does not", () => {
  const season = [50, 53, 50, 53];
  const alone = ownTypicalErrors(season, 4, usualHoldSettings);
  const steadied = ownTypicalErrors(season, 4, usualHoldSettings, [[0, 3, 0, 3, 0], [9]]);
  // Differences of 3: half their mean square is 4.5. Four pairs of last season and three of this.
  const error = (pairs: number) =>
    Math.sqrt((9 * 16 + ((2 * pairs) / 3) * 4.5) / (9 + (2 * pairs) / 3));
  expect(alone[3]).toBeCloseTo(error(3), 10);
  expect(steadied[3]).toBeCloseTo(error(7), 10);
  expect(steadied[0]).toBeCloseTo(error(4), 10);
});

test("a change as large as those looked for counts more than twice one of half the size", () => {
  const factor = (change: number) => changeFactor(change, 0.2, usualHoldSettings);
  expect(factor(-1.1)).toBeCloseTo(factor(1.1), 12);
  expect(factor(1.1)).toBeGreaterThan(2 * factor(0.55));
  expect(factor(0.1)).toBeLessThan(1);
});

test("fewer false flags asked for means a higher limit, whatever the number of measures", () => {
  for (const measures of [1, 2, 3]) {
    expect(seasonLimit(0.05, 20, measures)).toBeGreaterThan(seasonLimit(0.1, 20, measures));
    expect(seasonLimit(0.1, 20, measures)).toBeGreaterThan(seasonLimit(0.2, 20, measures));
  }
  expect(seasonLimit(0.1, 20, 4)).toBe(seasonLimit(0.1, 20, 3));
});
