import { seededChance } from "../../src/coaching/diary/seeded-chance";
import { groupPermutation, pairedPermutation } from "../../src/statistics/permutation";
import { figureOf } from "../published/figure-of";

// Drawn p has an SD of √(p(1 − p)/20 000): 0.003 at p = 0.2; four of them are let pass.
const four = 0.012;
const none = () => 0;

test("eighteen differences are too many to count and are drawn", () => {
  // All alike: only all signs kept or all turned are as far, 2 of 262 144.
  const alike = figureOf(pairedPermutation(Array<number>(18).fill(1), seededChance("alike")));
  expect(alike.exact).toBe(false);
  expect(alike.p).toBeGreaterThan(0);
  expect(alike.p).toBeLessThan(0.0005);
  expect(figureOf(pairedPermutation(Array<number>(17).fill(1), seededChance("few"))).exact).toBe(
    true,
  );
});

test("drawn signs agree with the exact binomial share", () => {
  // Twelve of 18 ones keep their sign: a sum of 6 or more either way, 2·P(B(18, ½) ≥ 12) = 0.237885.
  const differences = Array.from({ length: 18 }, (_, i) => (i < 12 ? 1 : -1));
  const found = figureOf(pairedPermutation(differences, seededChance("binomial")));
  expect(found.exact).toBe(false);
  expect(Math.abs(found.p - 0.237885)).toBeLessThan(four);
});

test("signs turn as often as not: an uneven sample keeps its exact share too", () => {
  // Fourteen of 18 ones keep their sign: 2·P(B(18, ½) ≥ 14) = 8096/262 144 = 0.030884. Were six signs
  // in ten turned it would be near 0.05. Four SD of the draw, √(p(1 − p)/20 000) = 0.00122, are let pass.
  const differences = Array.from({ length: 18 }, (_, i) => (i < 14 ? 1 : -1));
  const found = figureOf(pairedPermutation(differences, seededChance("uneven")));
  expect(found.exact).toBe(false);
  expect(Math.abs(found.p - 0.030884)).toBeLessThan(0.0049);
});

test("drawn splits agree with the exact hypergeometric share", () => {
  // Eight of twelve ones in the first of two groups of twelve:
  // 2·P(X ≥ 8), X hypergeometric (24, 12, 12) = 0.220325.
  const first = Array.from({ length: 12 }, (_, i) => (i < 8 ? 1 : 0));
  const second = Array.from({ length: 12 }, (_, i) => (i < 4 ? 1 : 0));
  const found = figureOf(groupPermutation(first, second, seededChance("splits")));
  expect(found.exact).toBe(false);
  expect(Math.abs(found.p - 0.220325)).toBeLessThan(four);
});

test("the same seed draws the same p", () => {
  const differences = Array.from({ length: 20 }, (_, i) => Math.sin(i) + 0.3);
  const ask = () => pairedPermutation(differences, seededChance("again"));
  expect(ask()).toEqual(ask());
});

test("sums that differ by rounding alone are ties, however large the values", () => {
  const tenths = (value: number) => value * 100_000.1;
  const p = (values: readonly number[]) => figureOf(pairedPermutation(values, none)).p;
  const differences = [8, 1, -5, 14, 5];
  expect(p(differences.map(tenths))).toBe(p(differences));
  const groups = (of: (value: number) => number) =>
    figureOf(groupPermutation([0, 17, 1].map(of), [8, 10, 12].map(of), none)).p;
  expect(groups(tenths)).toBe(groups((value) => value));
});

test("twenty thousand are drawn, and where each is as far p is one", () => {
  const differences = Array<number>(18).fill(1);
  const chance = jest.fn(() => 0.9);
  expect(figureOf(pairedPermutation(differences, chance))).toEqual({ p: 1, exact: false });
  expect(chance).toHaveBeenCalledTimes(20_000 * 18);
});

test("ten against ten are counted, 184,756 ways; ten against eleven, 352,716, are drawn", () => {
  const exact = (first: number, second: number) =>
    figureOf(
      groupPermutation(
        Array.from({ length: first }, (_, i) => i),
        Array.from({ length: second }, (_, i) => i + 0.5),
        seededChance("ways"),
      ),
    ).exact;
  expect([exact(10, 10), exact(10, 11)]).toEqual([true, false]);
});
