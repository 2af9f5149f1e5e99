import fc from "fast-check";
import { runningLoss } from "../../src/coaching/bar-speed/stop-rep";
import { velocityLoss } from "../../src/coaching/bar-speed/velocity-loss";
import { flightHeight } from "../../src/coaching/jumps/flight-height";
import { kgFromPounds, poundsFromKg } from "../../src/coaching/units/mass";
import { adjustedForMany } from "../../src/statistics/false-discovery";
import { mean, middleOf, standardDeviation } from "../../src/statistics/spread";
import { theilSen } from "../../src/statistics/theil-sen";
import { expectWithin, figureOf } from "../published/figure-of";
import { mannKendall } from "../reference/mann-kendall";

const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 4, maxLength: 12 });
const factor = fc.integer({ min: 1, max: 20 });
const speeds = fc.array(fc.integer({ min: 10, max: 200 }), { minLength: 2, maxLength: 10 });

test("adding a constant moves the mean and the median, and leaves the spread", () => {
  fc.assert(
    fc.property(values, fc.integer({ min: -500, max: 500 }), (given, shift) => {
      const moved = given.map((value) => value + shift);
      expectWithin(figureOf(mean(moved)), figureOf(mean(given)) + shift, 1e-8);
      expectWithin(middleOf(moved), middleOf(given) + shift, 1e-8);
      expectWithin(figureOf(standardDeviation(moved)), figureOf(standardDeviation(given)), 1e-8);
    }),
  );
});

test("another unit scales mean and spread alike", () => {
  fc.assert(
    fc.property(values, factor, (given, times) => {
      const scaled = given.map((value) => value * times);
      expectWithin(figureOf(mean(scaled)), times * figureOf(mean(given)), 1e-7);
      const spread = times * figureOf(standardDeviation(given));
      expectWithin(figureOf(standardDeviation(scaled)), spread, 1e-7);
    }),
  );
});

test("rows read backwards turn the trend round and leave the line through the middle", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 99 }), { minLength: 4 }), (given) => {
      const back = [...given].reverse();
      expect(figureOf(mannKendall(back)).s + figureOf(mannKendall(given)).s).toBe(0);
      const times = given.map((_, index) => index);
      const line = figureOf(theilSen(times, given));
      expectWithin(figureOf(theilSen([...times].reverse(), back)).slope, line.slope, 1e-9);
    }),
  );
});

test("velocity loss is the same in any unit and never below 0 nor as much as 1", () => {
  fc.assert(
    fc.property(speeds, factor, (given, times) => {
      const loss = figureOf(velocityLoss(given));
      expect(loss).toBeGreaterThanOrEqual(0);
      expect(loss).toBeLessThan(1);
      expectWithin(figureOf(velocityLoss(given.map((speed) => speed * times))), loss, 1e-12);
      expect(runningLoss(given).at(-1)).toBe(loss);
    }),
  );
});

test("longer in the air is higher, and twice as long four times as high", () => {
  fc.assert(
    fc.property(fc.integer({ min: 100, max: 590 }), (ms) => {
      const height = figureOf(flightHeight(ms / 1000));
      expect(figureOf(flightHeight((ms + 1) / 1000))).toBeGreaterThan(height);
      expectWithin(figureOf(flightHeight(ms / 500)), 4 * height, 1e-9);
    }),
  );
});

test("pounds come back as they went", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (given) => {
      expectWithin(poundsFromKg(kgFromPounds(given)), given, 1e-9);
    }),
  );
});

test("adjusted probabilities keep the order and are never smaller", () => {
  const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1 });
  fc.assert(
    fc.property(chances, (p) => {
      const adjusted = figureOf(adjustedForMany(p));
      for (let i = 0; i < p.length; i++) {
        expect(adjusted[i]!).toBeGreaterThanOrEqual(p[i]! * (1 - 1e-12));
        expect(adjusted[i]!).toBeLessThanOrEqual(1);
        for (let j = 0; j < p.length; j++) {
          if (p[i]! < p[j]!) expect(adjusted[i]!).toBeLessThanOrEqual(adjusted[j]!);
        }
      }
    }),
  );
});

test("adjusted probabilities stay where they were given, one by one", () => {
  // Hand-worked: 3·0.01 = 0.03, 3·0.02/2 = 0.03, 3·0.9/3 = 0.9.
  expect(figureOf(adjustedForMany([0.9, 0.01, 0.02]))).toEqual([0.9, 0.03, 0.03]);
  expect(figureOf(adjustedForMany([0, 1]))).toEqual([0, 1]);
  expect(figureOf(adjustedForMany([]))).toEqual([]);
});
