import { velocityLoss } from "../../src/coaching/bar-speed/velocity-loss";
import { chartShare, singleFromSet } from "../../src/coaching/blocks/repetition-load";
import { contactKind, slowContactS } from "../../src/coaching/jumps/contact-kind";
import { flightHeight } from "../../src/coaching/jumps/flight-height";
import { gravity } from "../../src/coaching/jumps/gravity";
import { refuse } from "../../src/outcome";
import { studentQuantile } from "../../src/statistics/distributions";
import { mean, standardDeviation } from "../../src/statistics/spread";
import { reliabilityLabels as label } from "../../src/words/reliability";
import { individualsChart } from "../reference/control-chart";
import { normalTwoSided } from "../reference/normal-two-sided";
import charts from "./control-charts.json";
import { expectWithin, figureOf, namedFigures } from "./figure-of";
import reliability from "./reliability.json";
import bounds from "./trade-bounds.json";

test("one repetition has no loss to give", () => {
  expect(velocityLoss([0.55])).toEqual(refuse("loss-few-reps", { reps: 1 }));
});

test.each(bounds.notCharted)("%d repetitions are asked of no chart and no equation", (reps) => {
  const refusal = refuse("reps-not-charted", { reps, most: 10 });
  expect(chartShare(reps)).toEqual(refusal);
  expect(singleFromSet(100, reps)).toEqual(refusal);
});

test("the handbook's six repetitions with 285 lb", () => {
  const { pounds, reps, single } = bounds.handbookUse;
  expectWithin(pounds / figureOf(chartShare(reps)), single, bounds.tolerance);
});

test("flight time and height answer each other at standard gravity, not at 9.81", () => {
  const { inverse, speed, otherGravityCm } = bounds.flight;
  expect(gravity).toBe(bounds.flight.gravity);
  expectWithin(figureOf(flightHeight(inverse[0]!)), inverse[1]!, 1e-4);
  const height = figureOf(flightHeight(speed.flightS));
  // Height in cm from the take-off speed: v²/2g.
  expectWithin(height, (100 * speed.takeOff ** 2) / (2 * gravity), 1e-4);
  expectWithin(otherGravityCm - height, 0.0105, 1e-4);
});

test("a quarter of a second on the ground is still fast, a millisecond more is slow", () => {
  expect(slowContactS).toBe(0.25);
  expect(contactKind(0.25)).toBe("fast");
  expect(contactKind(0.251)).toBe("slow");
});

test("Student's sleep data: typical error, and the paired t", () => {
  const { first, second, meanChange, changeSd, typicalError, t, p } = bounds.sleep;
  const found = namedFigures(
    "RELIABILITY",
    first.map((one, at) => [one, second[at]!]),
  );
  const [error] = found.get(label.typicalError)!;
  const [change] = found.get(label.meanChange)!;
  expectWithin(error, typicalError, bounds.tolerance);
  expectWithin(change, meanChange, bounds.tolerance);
  const sd = Math.SQRT2 * error;
  expectWithin(sd, changeSd, 2 * bounds.tolerance);
  expectWithin(change / (sd / Math.sqrt(first.length)), t, bounds.tolerance);
  // The t beyond which so small a share lies, both sides; p is given to six decimals.
  const beyond = (share: number) => figureOf(studentQuantile(1 - share / 2, first.length - 1));
  expect(t).toBeGreaterThan(beyond(p + bounds.tolerance));
  expect(t).toBeLessThan(beyond(p - bounds.tolerance));
});

test("flow rate: the limits rest on the moving range, not on the SD", () => {
  const { values } = charts.individuals;
  const { rangeLimit, sd, wideHigh, wideLow } = bounds.flowRate;
  const chart = figureOf(individualsChart(values));
  const spread = figureOf(standardDeviation(values));
  expectWithin(3.267 * chart.meanRange, rangeLimit, 1e-5);
  expectWithin(spread, sd, bounds.tolerance);
  expectWithin(figureOf(mean(values)) + 3 * spread, wideHigh, 2e-6);
  expectWithin(figureOf(mean(values)) - 3 * spread, wideLow, 2e-6);
  expect(chart.high).toBeLessThan(wideHigh - 1);
});

test.each(bounds.runLengths.rows)("beyond %d SD once in %d values", (sd, length) => {
  expectWithin(1 / normalTwoSided(sd!), length!, bounds.runLengths.tolerance);
});

test("a fifth of the SD between athletes, from the first trial", () => {
  const { share, first } = bounds.smallestChange;
  const spread = figureOf(standardDeviation(reliability.twoTrials.first));
  expectWithin(share * spread, first, bounds.tolerance);
});
