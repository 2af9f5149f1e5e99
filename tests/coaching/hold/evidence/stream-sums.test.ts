import { streamSums } from "../../../../src/coaching/hold/evidence/stream-sums";
import { usualHoldSettings } from "../../../../src/coaching/hold/hold-settings";
import { watchedSeason } from "../../../../src/coaching/hold/watched-season";

/** Six calm sessions, then one in which either of two measures is a typical error lower. */
const meanScore = (steadyFalls: boolean) => {
  const series = (squadError: number, falls: boolean) => ({
    squadError,
    values: [1, -1, 1, -1, 1, -1].map((one) => (one * squadError) / 2),
    last: falls ? -squadError : 0,
  });
  const [steady, wobbly] = [series(2, steadyFalls), series(8, !steadyFalls)];
  const season = watchedSeason(
    [steady, wobbly].map(({ squadError, values, last }) => ({
      squadError,
      values: [...values, last],
    })),
    6,
    12,
    usualHoldSettings,
  );
  const { weight, score } = streamSums(season, 6, season.measures);
  return (score[7]! - score[6]!) / (weight[7]! - weight[6]!);
};

test("a session is read from the measures that err little sooner than from those that err much", () => {
  const [steady, wobbly] = [meanScore(true), meanScore(false)];
  expect(steady).toBeLessThan(wobbly);
  expect(wobbly).toBeLessThanOrEqual(0);
});
