import { adjustedForMany } from "../../src/statistics/false-discovery";
import { fisherExact } from "../../src/statistics/fisher-exact";
import { mannKendall } from "../../src/statistics/mann-kendall";
import { groupPermutation, pairedPermutation } from "../../src/statistics/permutation";
import {
  lagOneAutocorrelation,
  mean,
  median,
  standardDeviation,
} from "../../src/statistics/spread";
import { lineInterval, straightLine } from "../../src/statistics/straight-line";
import { theilSen } from "../../src/statistics/theil-sen";
import { figureOf } from "../published/figure-of";
import { agree, onCases } from "./cases";
import { leastSquares, product, transposed } from "./matrix";

const none = () => 0;
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

test("mean, median, spread and lag by differences of all pairs", () => {
  onCases(1, ({ whole, real, list }) => {
    const values = list(whole(2, 9), () => real(-50, 50));
    const n = values.length;
    // The value from which the signed distances cancel.
    agree(sum(values.map((value) => value - figureOf(mean(values)))), 0, "mean");
    agree(figureOf(median(values)), middle(values), "median");
    let pairs = 0;
    for (const a of values) for (const b of values) pairs += (a - b) ** 2;
    agree(figureOf(standardDeviation(values)), Math.sqrt(pairs / (2 * n * (n - 1))), "spread");
    const centred = values.map((one) => one - sum(values) / n);
    const shift = transposed([[...centred.slice(1), 0]]);
    const squares = product([centred], transposed([centred]))[0]![0]!;
    agree(figureOf(lagOneAutocorrelation(values)), product([centred], shift)[0]![0]! / squares);
  });
});

test("straight line and its intervals by the normal equations of matrices", () => {
  onCases(2, ({ whole, real, list }) => {
    const n = whole(3, 9);
    const x = list(n, (i) => i + real(0, 0.9));
    const y = x.map((one) => 3 - 0.7 * one + real(-1, 1));
    const line = figureOf(straightLine(x, y));
    const identity = x.map((_, i) => x.map((__, j) => (i === j ? 1 : 0)));
    const design = x.map((one) => [1, one]);
    const { coefficients, covariance } = leastSquares(design, y, identity);
    const [a, b] = coefficients as [number, number];
    agree(line.intercept, a, "intercept");
    agree(line.slope, b, "slope");
    const off = y.map((one, i) => one - a - b * x[i]!);
    const residual = Math.sqrt(sum(off.map((one) => one ** 2)) / (n - 2));
    agree(line.residualSd, residual, "residual");
    agree(line.interceptError, residual * Math.sqrt(covariance[0]![0]!), "intercept error");
    agree(line.slopeError, residual * Math.sqrt(covariance[1]![1]!), "slope error");
    const level = sum(y) / n;
    // Squares of the fitted values about the mean, not one less those of the residuals.
    const fitted = sum(x.map((one) => (a + b * one - level) ** 2));
    agree(line.rSquared, fitted / sum(y.map((one) => (one - level) ** 2)), "share");
    const at = real(-2, 12);
    const here = [[1, at]];
    const variance = product(product(here, covariance), transposed(here))[0]![0]!;
    const ofLine = figureOf(lineInterval(line, at, 0.9, "line"));
    const ofRow = figureOf(lineInterval(line, at, 0.9, "row"));
    agree(ofLine.fitted, a + b * at, "fitted");
    agree((ofLine.low + ofLine.high) / 2, a + b * at, "middle");
    const ratio = (ofRow.high - ofRow.low) / (ofLine.high - ofLine.low);
    agree(ratio, Math.sqrt((1 + variance) / variance), "row against line");
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
  });
});

test("Mann–Kendall: variance from all orders of three values, probability by the error function", () => {
  onCases(5, ({ whole, list }) => {
    const values = list(whole(4, 7), () => whole(0, 5));
    if (new Set(values).size === 1) return;
    const found = figureOf(mannKendall(values));
    let s = 0;
    values.forEach((late, j) => {
      s += values.slice(0, j).filter((early) => early < late).length;
      s -= values.slice(0, j).filter((early) => early > late).length;
    });
    agree(found.s, s, "s");
    agree(found.variance, varianceOverOrders(values), "variance");
    const z = s === 0 ? 0 : (s > 0 ? s - 1 : s + 1) / Math.sqrt(found.variance);
    agree(found.z, z, "z");
    agree(found.p, errorFunctionRest(Math.abs(z) / Math.SQRT2), "p");
  });
});

/** Variance of S when every order of the values is as likely, from pairs and from chains of three. */
function varianceOverOrders(values: readonly number[]): number {
  const n = values.length;
  let pairs = 0;
  let chains = 0;
  for (let a = 0; a < n; a++) {
    for (let b = 0; b < n; b++) {
      if (a === b) continue;
      const ab = Math.sign(values[b]! - values[a]!);
      pairs += ab ** 2;
      for (let c = 0; c < n; c++) {
        if (c === a || c === b) continue;
        const ac = Math.sign(values[c]! - values[a]!);
        const bc = Math.sign(values[c]! - values[b]!);
        chains += ab * ac + ab * bc + ac * bc;
      }
    }
  }
  const two = n * (n - 1);
  const three = two * (n - 2);
  // Pairs of places, each with the mean over ordered values; twice for either order of the product.
  return (two / 2) * (pairs / two) + 2 * (three / 6) * (chains / three);
}

/** 1 − erf(x): the series of its integral for small x, the continued fraction for large. */
function errorFunctionRest(x: number): number {
  if (x < 2.5) {
    let term = x;
    let total = x;
    for (let k = 1; k < 80; k++) {
      term *= (2 * x * x) / (2 * k + 1);
      total += term;
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * total;
  }
  let rest = 0;
  for (let k = 80; k > 0; k--) rest = k / 2 / (x + rest);
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / (x + rest);
}

test("Fisher's exact test by counting hands of cards", () => {
  const choose = (n: number, k: number): number =>
    k < 0 || k > n ? 0 : k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k;
  onCases(6, ({ whole }) => {
    const [a, b, c, d] = [whole(0, 8), whole(0, 8), whole(0, 8), whole(0, 8)];
    const ways = (x: number) => choose(a + b, x) * choose(c + d, a + c - x);
    const places = Array.from({ length: a + b + 1 }, (_, x) => x);
    const all = sum(places.map(ways));
    const share = (keep: (x: number) => boolean) => sum(places.filter(keep).map(ways)) / all;
    const found = figureOf(fisherExact(a, b, c, d));
    agree(
      found.less,
      share((x) => x <= a),
      "less",
    );
    agree(
      found.greater,
      share((x) => x >= a),
      "greater",
    );
    agree(
      found.twoSided,
      share((x) => ways(x) <= ways(a) * (1 + 1e-7)),
      "two-sided",
    );
  });
});

test("permutations by adding one value at a time to the sums reached so far", () => {
  onCases(7, ({ whole, list }) => {
    const differences = list(whole(1, 8), () => whole(-6, 6));
    let reached = new Map([[0, 1]]);
    for (const value of differences) {
      const next = new Map<number, number>();
      for (const [total, ways] of reached) {
        for (const to of [total + value, total - value]) next.set(to, (next.get(to) ?? 0) + ways);
      }
      reached = next;
    }
    const edge = Math.abs(sum(differences));
    let far = 0;
    for (const [total, ways] of reached) if (Math.abs(total) >= edge) far += ways;
    const paired = figureOf(pairedPermutation(differences, none));
    agree(paired.p, far / 2 ** differences.length, "paired");

    const first = list(whole(1, 4), () => whole(0, 9));
    const second = list(whole(1, 4), () => whole(0, 9));
    const counts = first.map(() => new Map<number, number>());
    const bySize = [new Map([[0, 1]]), ...counts];
    for (const value of [...first, ...second]) {
      for (let size = first.length; size > 0; size--) {
        for (const [total, ways] of bySize[size - 1]!) {
          bySize[size]!.set(total + value, (bySize[size]!.get(total + value) ?? 0) + ways);
        }
      }
    }
    const all = [...first, ...second];
    // Whole numbers: n·sum against size·total, without a division.
    const off = (total: number) => Math.abs(all.length * total - first.length * sum(all));
    let splits = 0;
    let farSplits = 0;
    for (const [total, ways] of bySize[first.length]!) {
      splits += ways;
      if (off(total) >= off(sum(first))) farSplits += ways;
    }
    agree(figureOf(groupPermutation(first, second, none)).p, farSplits / splits, "groups");
  });
});
