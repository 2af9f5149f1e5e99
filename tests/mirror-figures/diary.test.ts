import { aroundLevel } from "../../src/coaching/diary/around-level";
import { type ComparedDays, slopeOf } from "../../src/coaching/diary/link";
import { agree, onCases, same } from "./cases";
import { leastSquares } from "./matrix";

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** The middle: of all places between two values, where as many lie above as below. */
function middle(values: readonly number[]): number {
  const below = (x: number) => values.filter((value) => value <= x).length;
  const least = Math.min(...values.filter((value) => 2 * below(value) >= values.length));
  const above = values.filter((value) => 2 * below(value) > values.length);
  return (least + Math.min(...above)) / 2;
}

test("a day against the level around it: the median of four neighbours either side, counted out", () => {
  onCases(81, ({ real, whole, coin, list }) => {
    const values = list(whole(1, 14), () => (coin(0.2) ? null : real(-9, 9)));
    const found = aroundLevel(values);
    values.forEach((value, at) => {
      const before = values
        .slice(0, at)
        .filter((one) => one !== null)
        .slice(-4);
      const after = values
        .slice(at + 1)
        .filter((one) => one !== null)
        .slice(0, 4);
      const around = [...before, ...after];
      const level = found[at]!;
      same(level === null, value === null || around.length < 3);
      if (value === null || level === null) return;
      agree(level.away, value - middle(around), "away");
      agree(level.levelVariance, 1.57 / around.length, "variance");
      const sides = [before, after].map((side) =>
        side.length < 3 ? Number.NaN : value - middle(side),
      );
      const [low, high] = [Math.min(...sides), Math.max(...sides)];
      // Outside both levels the nearer one counts, between them none does.
      const beyond = Math.max(low, 0) + Math.min(high, 0);
      agree(level.fromNearer, Number.isNaN(low) ? level.away : beyond, "nearer");
    });
  });
});

test("how performance goes with an item: least squares with a level for each weekday, not centred", () => {
  onCases(82, ({ real, whole, list }) => {
    const weekdays = list(whole(1, 3), () => whole(2, 5));
    const strata: number[][] = [];
    let days = 0;
    for (const count of weekdays) {
      strata.push(Array.from({ length: count }, (_, one) => days + one));
      days += count;
    }
    const item = list(days, () => real(1, 5));
    const performance = list(days, () => real(-6, 6));
    const centred = (values: readonly number[]) => {
      const own = [...values];
      for (const places of strata) {
        const level = mean(places.map((at) => values[at]!));
        for (const at of places) own[at]! -= level;
      }
      return own;
    };
    const stream = { value: null, beyond: centred(performance), sizes: list(days, () => 1) };
    const compared = { itemBeyond: centred(item), strata } as unknown as ComparedDays;
    const found = slopeOf(compared, stream);
    const freedom = days - strata.length - 1;
    if (freedom < 1) return same(found, null);
    const columns = item.map((value, at) => [
      value,
      ...strata.map((places) => (places.includes(at) ? 1 : 0)),
    ]);
    const unit = item.map((_, i) => item.map((__, j) => (i === j ? 1 : 0)));
    const { coefficients, covariance } = leastSquares(columns, performance, unit);
    const rest = performance.map(
      (value, at) => value - columns[at]!.reduce((all, one, k) => all + one * coefficients[k]!, 0),
    );
    const variance = rest.reduce((all, one) => all + one * one, 0) / freedom;
    agree(found!.perUnit, coefficients[0]!, "slope");
    agree(found!.error, Math.sqrt(variance * covariance[0]![0]!), "error");
    return same(found!.freedom, freedom);
  });
});
