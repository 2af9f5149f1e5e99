import { adjustedForMany } from "../../src/statistics/false-discovery";
import { mean, middleOf, standardDeviation } from "../../src/statistics/spread";
import { theilSen } from "../../src/statistics/theil-sen";
import { figureOf } from "../published/figure-of";
import { mannKendall } from "../reference/mann-kendall";
import { agree, onCases, same } from "./cases";

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);
/** Middle by its definition: as many below as above. */
const middle = (values: readonly number[]) => {
  const inOrder = sorted(values);
  return (
    (inOrder[Math.floor((inOrder.length - 1) / 2)]! +
      inOrder[Math.ceil((inOrder.length - 1) / 2)]!) /
    2
  );
};

test("mean, median and spread by differences of all pairs", () => {
  onCases(1, ({ whole, real, list }) => {
    const values = list(whole(2, 9), () => real(-50, 50));
    const n = values.length;
    // The value from which the signed distances cancel.
    agree(sum(values.map((value) => value - figureOf(mean(values)))), 0, "mean");
    agree(middleOf(values), middle(values), "median");
    let pairs = 0;
    for (const a of values) for (const b of values) pairs += (a - b) ** 2;
    agree(figureOf(standardDeviation(values)), Math.sqrt(pairs / (2 * n * (n - 1))), "spread");
  });
});

test("many tests at once by the definition: the least level at which each would be found", () => {
  onCases(3, ({ whole, real, list, coin }) => {
    const p = list(whole(1, 12), () => (coin(0.2) ? 0.05 : real(0, 1) ** 3));
    const adjusted = figureOf(adjustedForMany(p));
    for (const [i, one] of p.entries()) {
      // Each p at or above this one, as the border of finds, and how many lie at or under it.
      const borders = p.filter((other) => other >= one);
      const levels = borders.map((border) => {
        const finds = p.filter((other) => other <= border).length;
        return (border * p.length) / finds;
      });
      agree(adjusted[i]!, Math.min(1, ...levels), `p ${i + 1}`);
    }
  });
});

test("Theil–Sen slope: as many pairs rise faster as slower; intercept the middle of what is left", () => {
  onCases(4, ({ whole, real, list }) => {
    const n = whole(2, 9);
    const x = list(n, () => whole(0, 6) + (real(0, 1) < 0.5 ? 0 : 0.5));
    x[0] = -1;
    const y = list(n, () => whole(0, 40) / 4);
    const { slope, intercept } = figureOf(theilSen(x, y));
    const slopes = x.flatMap((a, i) =>
      x.flatMap((b, j) => (a < b ? [(y[j]! - y[i]!) / (b - a)] : [])),
    );
    agree(slope, middle(slopes), "slope");
    agree(intercept, middle(x.map((one, i) => y[i]! - slope * one)), "intercept");
    if (n < 4 || new Set(x).size < n) return;
    // Sen's own definition: with the slope taken out, Kendall's S is nought but for tied pairs.
    const inOrder = x.map((_, i) => i).sort((a, b) => x[a]! - x[b]!);
    const rest = inOrder.map((i) => Math.round((y[i]! - slope * x[i]!) * 1e9));
    if (new Set(rest).size === 1) return;
    const ties = rest.flatMap((one, i) => rest.slice(i + 1).filter((other) => other === one));
    same(Math.abs(figureOf(mannKendall(rest)).s) <= ties.length, true, "Kendall's S");
  });
});
