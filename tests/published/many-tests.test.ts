import { adjustedForMany } from "../../src/statistics/false-discovery";
import { expectWithin, figureOf } from "./figure-of";
import many from "./many-tests.json";

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
