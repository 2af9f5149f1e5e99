import { lineFit } from "../../src/coaching/bar-speed/line-fit";
import { usualLineSettings } from "../../src/coaching/bar-speed/line-settings";
import { expectWithin } from "./figure-of";
import curve from "./squat-curve.json";

/** An athlete whose best single is 100 kg, so that a load in kg is a share of it in %. */
function fitted(points: number[][]) {
  const rows = points.map(([loadKg, speed], day) => ({ day, loadKg: loadKg!, speed: speed! }));
  const line = lineFit(rows, null, null, usualLineSettings);
  if (!line) throw new Error("no line");
  return line;
}

test("the load–speed line through the published curve at 60 to 90 % meets it up to the best single", () => {
  const line = fitted(curve.speedAt.slice(0, 4));
  for (const [share, speed] of curve.speedAt) {
    expectWithin(line.intercept + line.slope * share!, speed!, curve.tolerance);
  }
});

test("the same line meets the points the published equation gives", () => {
  const line = fitted(curve.speedAt.slice(0, 4));
  for (const [speed, share] of curve.points) {
    expectWithin(line.intercept + line.slope * share!, speed!, curve.tolerance);
  }
});

test("mean speed of the whole lift: the line keeps within the published error", () => {
  const line = fitted(curve.meanSpeed.points);
  for (const [share, speed] of curve.meanSpeed.points) {
    expectWithin(line.intercept + line.slope * share!, speed!, curve.tolerance);
  }
});

test.each([
  ["mean propulsive speed", curve.share, curve.points.map(([speed, share]) => [share!, speed!])],
  ["mean speed", curve.meanSpeed.share, [...curve.meanSpeed.points, curve.meanSpeed.fast]],
] as const)("the points of %s are the published equation's", (_, equation, points) => {
  const { squared, linear, constant } = equation;
  for (const [share, speed] of points) {
    expectWithin(squared * speed! ** 2 + linear * speed! + constant, share!, 1e-3);
  }
});

test("the parallel squat's straight line comes back from its own points", () => {
  const { points, intercept, slope } = curve.parallel;
  const line = fitted(points.map(([share, speed]) => [speed!, share!]));
  expectWithin(line.intercept, intercept, 1e-6);
  expectWithin(line.slope, slope, 1e-6);
  // Speed on load, as the product fits it, is the same line when every point lies on it.
  expectWithin(fitted(points).slope, 1 / slope, 1e-9);
});
