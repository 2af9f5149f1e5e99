import { jStat } from "jstat";
import { normalDeviate } from "../../src/statistics/normal-deviate";

test("the share under the deviate is the one asked for, within .0002, by a general statistics library", () => {
  for (const share of [0.005, 0.0125, 0.02, 0.05, 0.0825, 0.1, 0.2, 0.33, 0.5, 0.9, 0.995]) {
    const below = jStat.normal.cdf(normalDeviate(share), 0, 1);
    expect(Math.abs(below - share)).toBeLessThan(0.0002);
  }
});
