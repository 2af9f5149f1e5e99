import { adjustedForMany } from "../../src/statistics/false-discovery";
import { fisherExact } from "../../src/statistics/fisher-exact";
import { groupPermutation, pairedPermutation } from "../../src/statistics/permutation";
import { expectWithin, figureOf } from "./figure-of";
import many from "./many-tests.json";

const noChance = () => {
  throw new Error("an exact test asks for no chance");
};

test("fifteen probabilities: adjusted as published, four finds", () => {
  const found = figureOf(adjustedForMany(many.p));
  found.forEach((p, i) => {
    expectWithin(p, many.adjusted[i]!, many.tolerance);
  });
  expect(found.filter((p) => p <= 0.05)).toHaveLength(4);
});

test("a small third probability carries the two before it", () => {
  const found = figureOf(adjustedForMany(many.stepUp.p));
  expect(found.filter((p) => p <= 0.05)).toHaveLength(many.stepUp.finds);
});

test.each(many.fisher)("$source", ({ table, less, greater, twoSided, tolerance }) => {
  const [a, b, c, d] = table as [number, number, number, number];
  const found = figureOf(fisherExact(a, b, c, d));
  if (less !== undefined) expectWithin(found.less, less, tolerance);
  if (greater !== undefined) expectWithin(found.greater, greater, tolerance);
  expectWithin(found.twoSided, twoSided, tolerance);
});

test("paired permutation of Darwin's maize", () => {
  const { differences, ways, of } = many.paired;
  expect(figureOf(pairedPermutation(differences, noChance))).toEqual({ p: ways / of, exact: true });
});

test("two groups split in 126 ways", () => {
  const { first, second, ways, of } = many.groups;
  expect(figureOf(groupPermutation(first, second, noChance))).toEqual({
    p: ways / of,
    exact: true,
  });
});
