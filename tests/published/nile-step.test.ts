import { stepEvidence } from "../../src/coaching/hold/evidence/step-evidence";
import { watchedSeason } from "../../src/coaching/hold/watched-season";
import { mean, standardDeviation } from "../../src/statistics/spread";
import { expectWithin, figureOf } from "./figure-of";
import trend from "./trend.json";

/**
 * Flow of the Nile at Aswan, 1871–1970: its fall after 1898 is the textbook example of a step
 * (Cobb 1978, Biometrika 65(2):243–251). A year stands for a session here, 1899 is the first low one.
 * One year either way is let pass, as the published change is given by a probability over years.
 */
test("the step of the Nile is dated to 1899, give or take a year", () => {
  const flow = trend.cases.find(({ source }) => source.startsWith("Nile"))!.y;
  const before = flow.slice(0, 10);
  const usual = figureOf(mean(before));
  const error = (100 * figureOf(standardDeviation(before))) / usual;
  const values = flow.map((value) => 100 * (value / usual - 1));
  const season = watchedSeason([{ values, squadError: error }], before.length, flow.length);
  const { low, high } = stepEvidence(season, flow.length - 1);
  expectWithin(1871 + low.onset, 1899, 1);
  expect(low.total).toBeGreaterThan(1000 * Math.max(high.total, 1));
});
