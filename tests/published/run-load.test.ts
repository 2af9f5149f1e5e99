import { likeness, runLoad } from "../../src/coaching/season/run-load";
import { refuse } from "../../src/outcome";
import { expectWithin, figureOf } from "./figure-of";
import published from "./run-load.json";

test("an hour at 7 is 420", () => {
  const { exertion, minutes, load } = published.run;
  expect(figureOf(runLoad(exertion, minutes))).toBe(load);
});

test("monotony and strain count rest days as zero", () => {
  const found = figureOf(likeness(published.days));
  expectWithin(found.monotony, published.monotony, published.tolerance);
  expectWithin(found.strain, published.strain, published.tolerance);
  const trained = figureOf(likeness(published.days.filter((load) => load > 0)));
  expectWithin(trained.monotony, published.restDropped, published.tolerance);
});

test("seven equal days have no monotony", () => {
  expect(likeness(Array(7).fill(300))).toEqual(refuse("load-unvarying", { days: 7 }));
});
