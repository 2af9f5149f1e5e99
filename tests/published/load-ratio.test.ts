import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../../src/catalogue";
import { expectWithin } from "./figure-of";
import published from "./load-ratio.json";

// The product makes no such ratio; here stand the figures with which the README says why.
const days = published.step.flatMap(({ days: count, load }) => Array<number>(count).fill(load));
const sum = (list: readonly number[]) => list.reduce((total, load) => total + load, 0);
const weight = (span: number) => 2 / (span + 1);
const smoothed = (span: number) =>
  days.reduce((level, load) => level + weight(span) * (load - level), days[0]!);
const readme = readFileSync(join(__dirname, "../../README.md"), "utf8");
const part = readme.slice(
  readme.indexOf("<!-- run-load -->"),
  readme.indexOf("<!-- /run-load -->"),
);

test("the same four weeks give three ratios, as the README says", () => {
  const { ratio, tolerance, weights } = published;
  expectWithin(weight(7), weights[7], tolerance);
  expectWithin(weight(28), weights[28], tolerance);
  expectWithin(smoothed(7), published.acute, tolerance);
  expectWithin(smoothed(28), published.chronic, tolerance);
  expectWithin(smoothed(7) / smoothed(28), ratio.exponential, tolerance);
  expectWithin(sum(days.slice(-7)) / (sum(days) / 4), ratio.coupled, tolerance);
  expectWithin(sum(days.slice(-7)) / (sum(days.slice(0, 21)) / 3), ratio.uncoupled, tolerance);
  expect(part).toContain("give 1.33 when");
  expect(part).toContain("1.5 when it does not, and 1.20 with");
});

test("a week among its own four weeks: at most four, and tied to them at one half", () => {
  const week = 2100;
  expect(week / ((week + 0 + 0 + 0) / 4)).toBe(published.mostCoupled);
  // Weeks of one variance: covariance with their mean 1/4, variances 1 and 1/4.
  expect(0.25 / Math.sqrt(1 * 0.25)).toBe(published.coupledCorrelation);
  expect(part).toContain("cannot pass 4, and the two correlate at 0.5");
});

test("no formula offers a ratio of loads or a risk of injury", () => {
  for (const { name, parameters, results } of catalogue) {
    const offered = [name, ...results, ...parameters.map((one) => one.name)].join(" ");
    expect(offered).not.toMatch(/\bratio\b|\bacute|\bchronic|\brisk/i);
  }
});
