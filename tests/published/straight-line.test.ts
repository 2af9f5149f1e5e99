import { refuse } from "../../src/outcome";
import { lineInterval, straightLine } from "../../src/statistics/straight-line";
import braking from "./braking-distance.json";
import { expectDigits, expectWithin, figureOf } from "./figure-of";
import norris from "./nist-norris.json";
import squat from "./squat-line.json";
import toluca from "./toluca.json";

const norrisLine = figureOf(straightLine(norris.x, norris.y));
const tolucaLine = figureOf(straightLine(toluca.x, toluca.y));
const squatLine = figureOf(straightLine(squat.loads, squat.speeds));

test.each(Object.entries(norris.expected))("Norris keeps its certified %s", (name, expected) => {
  expectDigits(norrisLine[name as keyof typeof norris.expected], expected, norris.tolerance);
});

test.each(braking.intervals)(
  "stopping distance at 15: 95 % interval of a $of",
  ({ of, low, high }) => {
    const line = figureOf(straightLine(braking.x, braking.y));
    const found = figureOf(lineInterval(line, braking.at, braking.share, of as "row" | "line"));
    expectWithin(found.fitted, braking.fitted, braking.tolerance);
    expectWithin(found.low, low, braking.tolerance);
    expectWithin(found.high, high, braking.tolerance);
  },
);

test("Norris at 500 keeps its 95 % prediction interval", () => {
  const { x, share, fitted, low, high, tolerance } = norris.row;
  const found = figureOf(lineInterval(norrisLine, x, share, "row"));
  expectWithin(found.fitted, fitted, tolerance);
  expectWithin(found.low, low, tolerance);
  expectWithin(found.high, high, tolerance);
});

test("the Toluca line has the textbook's coefficients", () => {
  expectWithin(tolucaLine.intercept, toluca.line.intercept, 1e-6);
  expectWithin(tolucaLine.slope, toluca.line.slope, 1e-6);
  expectWithin(tolucaLine.residualSd, toluca.line.residualSd, 1e-6);
});

test.each(toluca.intervals)("Toluca at $x: 90 % for a $of", ({ x, of, fitted, low, high }) => {
  const found = figureOf(lineInterval(tolucaLine, x, 0.9, of as "row" | "line"));
  expectWithin(found.fitted, fitted, 6e-5);
  expectWithin(found.low, low, 6e-5);
  expectWithin(found.high, high, 6e-5);
});

test.each(Object.entries(squat.expected))(
  "one athlete's squat line has its %s",
  (name, expected) => {
    expectWithin(squatLine[name as keyof typeof squat.expected], expected, squat.tolerance);
  },
);

test.each(squat.loadAt)("at %d m/s the squat line stands at %d kg", (speed, load) => {
  expectWithin((speed - squatLine.intercept) / squatLine.slope, load, squat.tolerance);
});

test("load on speed is another line and answers another load", () => {
  const other = figureOf(straightLine(squat.speeds, squat.loads));
  expectWithin(other.intercept, squat.wrongWay.intercept, squat.tolerance);
  expectWithin(other.slope, squat.wrongWay.slope, squat.tolerance);
  expectWithin(other.intercept + 0.3 * other.slope, squat.wrongWayAt30, squat.tolerance);
});

test("zero speed stands where the line says, and half the product of both ends is the area", () => {
  const zeroSpeedLoad = -squatLine.intercept / squatLine.slope;
  expectWithin(zeroSpeedLoad, squat.zeroSpeedLoad, squat.tolerance);
  expectWithin((squatLine.intercept * zeroSpeedLoad) / 2, squat.area, squat.tolerance);
});

test("two sets make no line with a spread: three are asked for", () => {
  expect(straightLine(squat.loads.slice(0, 2), squat.speeds.slice(0, 2))).toEqual(
    refuse("values-too-few", { found: 2, needed: 3 }),
  );
});
