import { expectedSpeed, speedOnLine } from "../../src/coaching/bar-speed/expected-speed";
import { usualLineSettings } from "../../src/coaching/bar-speed/line-settings";
import { loadSpeedLine } from "../../src/coaching/bar-speed/load-speed-line";
import { studentLimit } from "../../src/statistics/limits";
import { standardDeviation } from "../../src/statistics/spread";
import braking from "./braking-distance.json";
import { expectDigits, expectWithin, figureOf } from "./figure-of";
import norris from "./nist-norris.json";
import squat from "./squat-line.json";
import toluca from "./toluca.json";

/** Sets that the product's residual SD takes the assumed one to be worth. */
const assumed = 10;

/**
 * The load–speed line of sets of one day, with nothing taken from squad or settings: ordinary least
 * squares. A line that rises is given upside down, as speed falls with load.
 */
function lineOf(x: readonly number[], y: readonly number[], sign = 1) {
  const rows = x.map((loadKg, at) => ({ day: 0, loadKg, speed: sign * y[at]! }));
  const nothing = { speed: 0, sd: Number.POSITIVE_INFINITY };
  const drawn = (setSd: number) =>
    figureOf(loadSpeedLine(rows, 0, nothing, { ...usualLineSettings, daySd: 0, setSd }));
  const freedom = x.length - 2;
  const squares = drawn(1).residualSd ** 2 * (assumed + freedom) - assumed;
  const residualSd = Math.sqrt(squares / freedom);
  const line = drawn(residualSd);
  const ySquares = (x.length - 1) * figureOf(standardDeviation(y)) ** 2;
  return {
    line: { ...line, firstSet: { offset: 0, sd: residualSd, freedom } },
    sign,
    freedom,
    intercept: sign * line.intercept,
    slope: sign * line.slope,
    interceptError: Math.sqrt(line.interceptVariance),
    slopeError: Math.sqrt(line.slopeVariance),
    residualSd,
    rSquared: 1 - squares / ySquares,
  };
}

/** Fitted value with the limits around it, for a new row or for the line's own height. */
function interval(of: string, fit: ReturnType<typeof lineOf>, at: number, percent: number) {
  const { line, sign, freedom, residualSd } = fit;
  const { speed, error } = speedOnLine(line, at);
  const spread = of === "row" ? Math.hypot(error, residualSd) : error;
  const half = studentLimit(percent, freedom) * spread;
  return { fitted: sign * speed, low: sign * speed - half, high: sign * speed + half };
}

function expectInterval(
  found: ReturnType<typeof interval>,
  expected: { fitted: number; low: number; high: number },
  tolerance: number,
) {
  for (const end of ["fitted", "low", "high"] as const)
    expectWithin(found[end], expected[end], tolerance);
}

const norrisLine = lineOf(norris.x, norris.y, -1);
const tolucaLine = lineOf(toluca.x, toluca.y, -1);
const squatLine = lineOf(squat.loads, squat.speeds);

test.each(Object.entries(norris.expected))("Norris keeps its certified %s", (name, expected) => {
  expectDigits(norrisLine[name as keyof typeof norris.expected], expected, norris.tolerance);
});

test.each(braking.intervals)(
  "stopping distance at 15: 95 % interval of a $of",
  ({ of, low, high }) => {
    const found = interval(of, lineOf(braking.x, braking.y, -1), braking.at, 100 * braking.share);
    expectInterval(found, { fitted: braking.fitted, low, high }, braking.tolerance);
  },
);

test("Norris at 500 keeps its 95 % prediction interval", () => {
  const { x, share, tolerance } = norris.row;
  expectInterval(interval("row", norrisLine, x, 100 * share), norris.row, tolerance);
});

test("the Toluca line has the textbook's coefficients", () => {
  expectWithin(tolucaLine.intercept, toluca.line.intercept, 1e-6);
  expectWithin(tolucaLine.slope, toluca.line.slope, 1e-6);
  expectWithin(tolucaLine.residualSd, toluca.line.residualSd, 1e-6);
});

test.each(toluca.intervals)("Toluca at $x: 90 % for a $of", (expected) => {
  expectInterval(interval(expected.of, tolucaLine, expected.x, 90), expected, 6e-5);
});

test.each(toluca.intervals.filter(({ of }) => of === "row"))(
  "Toluca at $x by the expected speed itself",
  ({ x, fitted, low, high }) => {
    const { speed, low: down, high: up } = expectedSpeed(tolucaLine.line, x);
    expectInterval({ fitted: -speed, low: -up, high: -down }, { fitted, low, high }, 6e-5);
  },
);

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
  const other = lineOf(squat.speeds, squat.loads);
  expectWithin(other.intercept, squat.wrongWay.intercept, squat.tolerance);
  expectWithin(other.slope, squat.wrongWay.slope, squat.tolerance);
  expectWithin(other.intercept + 0.3 * other.slope, squat.wrongWayAt30, squat.tolerance);
});

test("zero speed stands where the line says, and half the product of both ends is the area", () => {
  const zeroSpeedLoad = -squatLine.intercept / squatLine.slope;
  expectWithin(zeroSpeedLoad, squat.zeroSpeedLoad, squat.tolerance);
  expectWithin((squatLine.intercept * zeroSpeedLoad) / 2, squat.area, squat.tolerance);
});
