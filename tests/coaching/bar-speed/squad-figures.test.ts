import { leadingSets } from "../../../src/coaching/bar-speed/leading-sets";
import type { LineFit, LineRow } from "../../../src/coaching/bar-speed/line-fit";
import { lineFitWithDrift } from "../../../src/coaching/bar-speed/line-fit-with-drift";
import { usualLineSettings as usual } from "../../../src/coaching/bar-speed/line-settings";
import { surerLine } from "../../../src/coaching/bar-speed/squad-lift";
import { withSquadSpread } from "../../../src/coaching/bar-speed/squad-spread";

const line: LineFit = {
  intercept: 1.4,
  slope: -0.01,
  interceptVariance: 0.01,
  covariance: 0,
  slopeVariance: 1e-6,
};
/** A set on the line at 60 kg, 0.8 m/s, and so much faster. */
const row = (leads: LineRow["leads"], off: number): LineRow => ({
  day: 1,
  loadKg: 60,
  speed: 0.8 + off,
  ...(leads ? { leads } : {}),
});

test("a squad's first sets are steadied by ten on the line, with the spread of days and sets", () => {
  const one = { rows: [row("work", 0.01), row("work", 0.03), row("marker", 0.5)], line };
  const other = { rows: [row("work", 0.08), row(undefined, 0.5)], line };
  const lineless = { rows: [row("work", 0.5)], line: null };
  const { offset, sd } = leadingSets([one, other, lineless], "work", usual);
  // 0.01 + 0.03 + 0.08 over three sets and ten; squares of the first athlete alone, ±0.01 about 0.02.
  expect(offset).toBeCloseTo(0.12 / 13, 12);
  const assumed = 10 * (usual.daySd ** 2 + usual.setSd ** 2);
  expect(sd).toBeCloseTo(Math.sqrt((assumed + 2 * 0.01 ** 2) / 11), 12);
});

test("a squad without first sets has no offset and the assumed spread", () => {
  const { offset, sd } = leadingSets([{ rows: [row(undefined, 0.2)], line }], "marker", usual);
  expect(offset).toBe(0);
  expect(sd).toBeCloseTo(Math.hypot(usual.daySd, usual.setSd), 12);
});

/** Days of two sets, 60 and 70 kg, on the line and drifting 0.001 m/s a day. */
const drifting = (days: number) =>
  Array.from({ length: days }, (_, at) =>
    [60, 70].map((loadKg) => ({ day: 7 * at, loadKg, speed: 1.4 - 0.01 * loadKg - 0.007 * at })),
  ).flat();

test("five days tell a drift from a slope, four do not", () => {
  expect(lineFitWithDrift(drifting(4), usual)).toBeNull();
  const found = lineFitWithDrift(drifting(5), usual)!;
  expect(found.slope).toBeCloseTo(-0.01, 9);
  // The intercept is that of the middle day, the third.
  expect(found.intercept).toBeCloseTo(1.4 - 0.014, 9);
});

test("loads that climb day by day as the drift does leave it and the slope untold", () => {
  const climbing = Array.from({ length: 8 }, (_, at) => ({
    day: 7 * at,
    loadKg: 60 + 2.5 * at,
    speed: 0.8 - 0.01 * at,
  }));
  expect(lineFitWithDrift(climbing, usual)).toBeNull();
  for (const stepKg of [0.7, 1.1, 2.6, 3.3]) {
    const other = climbing.map((one, at) => ({ ...one, loadKg: 60 + stepKg * at }));
    expect(lineFitWithDrift(other, usual)).toBeNull();
  }
  // A usual size of drifts decides between them.
  expect(lineFitWithDrift(climbing, usual, 0.0003)!.slope).toBeCloseTo(-0.004, 3);
});

test("one load all along tells no slope, in pounds neither, where sums leave a hair of spread", () => {
  const level = (loadKg: number) =>
    Array.from({ length: 37 }, (_, at) => ({
      day: 3 * Math.floor(at / 3),
      loadKg,
      speed: 0.7 + 0.03 * Math.sin(at),
    }));
  for (let pounds = 95; pounds <= 225; pounds += 5) {
    expect(lineFitWithDrift(level(pounds * 0.45359237), usual)).toBeNull();
    expect(lineFitWithDrift(level(pounds), usual)).toBeNull();
  }
});

test("loads a gram apart, as pounds rounded in two ways are, tell no slope either", () => {
  const grams = Array.from({ length: 10 }, (_, at) => ({
    day: 3 * at,
    loadKg: at % 2 === 0 ? 60 : 60.001,
    speed: 0.7 + 0.03 * Math.sin(at),
  }));
  expect(lineFitWithDrift(grams, usual)).toBeNull();
});

test("of two lines the one that knows its intercept better stands, of equals and of one that one", () => {
  const surer = { ...line, interceptVariance: 0.005 };
  expect(surerLine(line, surer)).toBe(surer);
  expect(surerLine(surer, line)).toBe(surer);
  const equal = { ...line };
  expect(surerLine(line, equal)).toBe(line);
  expect(surerLine(null, line)).toBe(line);
  expect(surerLine(line, null)).toBe(line);
  expect(surerLine(null, null)).toBeNull();
});

/** Days of so many speeds each, at one load. */
const days = (...speeds: readonly (readonly number[])[]) =>
  speeds.flatMap((sets, day) => sets.map((speed) => ({ day, loadKg: 60, speed })));
const flat = { ...line, slope: 0 };

test("a squad's own spread of days and sets, each steadied by ten of the assumed", () => {
  const rows = days([0.7, 0.72], [0.74], [0.66, 0.68]);
  const found = withSquadSpread([{ rows, line: flat }], usual);
  // Within days 0.01 four times, two degrees of freedom.
  const setVariance = (10 * usual.setSd ** 2 + 4 * 0.01 ** 2) / 12;
  // Day means 0.71, 0.74, 0.67 about their own; of two thirds of a set's variance each, one degree left.
  const level = (0.71 + 0.74 + 0.67) / 3;
  const squares = [0.71, 0.74, 0.67].reduce((sum, mean) => sum + (mean - level) ** 2, 0);
  const dayVariance = (10 * usual.daySd ** 2 + squares - (2 / 3) * setVariance) / 11;
  expect(found.setSd).toBeCloseTo(Math.sqrt(setVariance), 12);
  expect(found.daySd).toBeCloseTo(Math.sqrt(dayVariance), 12);
  expect(found.spreadFreedom).toBe(usual.spreadFreedom + 1);
});

test("an athlete of two days says nothing of the squad's spread, three like days make it small, not nought", () => {
  const two = { rows: days([0.7, 0.8], [0.4]), line: flat };
  expect(withSquadSpread([two], usual)).toEqual(usual);
  const even = Array.from({ length: 400 }, () => ({ rows: days([0.7], [0.7], [0.7]), line: flat }));
  expect(withSquadSpread(even, usual)).toMatchObject({ daySd: 0.008, setSd: usual.setSd });
});
