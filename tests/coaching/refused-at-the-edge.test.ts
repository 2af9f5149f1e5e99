import { jStat } from "jstat";
import type { LoadSpeedLine } from "../../src/coaching/bar-speed/load-speed-line";
import { strengthEstimate } from "../../src/coaching/bar-speed/strength-estimate";
import { velocityLoss } from "../../src/coaching/bar-speed/velocity-loss";
import { platesASide, roundDownToPlates } from "../../src/coaching/blocks/plate-loading";
import { repsInReserve } from "../../src/coaching/blocks/reps-in-reserve";
import { attemptHeight } from "../../src/coaching/jumps/attempt-height";
import { flightHeight } from "../../src/coaching/jumps/flight-height";
import { reactiveStrength } from "../../src/coaching/jumps/reactive-strength";
import { stackHeight } from "../../src/coaching/jumps/stack-height";
import type { Outcome } from "../../src/outcome";
import { refuse } from "../../src/outcome";
import { jumpAttempt } from "./series/invented-season";

const attempt = jumpAttempt({ day: 20_000 });
const plates = [
  { row: 2, massKg: 15, thicknessCm: 6, owned: 2 },
  { row: 3, massKg: 5, thicknessCm: 3, owned: null },
];

type Edge = [string, () => Outcome<unknown>, () => Outcome<unknown>, Outcome<never>];

/** What asks for the last that is answered and the first that is not, and its code with its facts. */
const edges: Edge[] = [
  [
    "speed of 0",
    () => velocityLoss([0.5, 0.01]),
    () => velocityLoss([0.5, 0]),
    refuse("loss-speed-impossible", { rep: 2, speed: 0 }),
  ],
  [
    "flight past 1.2 s",
    () => flightHeight(1.2),
    () => flightHeight(1.201),
    refuse("flight-impossible", { flightS: 1.201 }),
  ],
  [
    "no flight",
    () => flightHeight(0.1),
    () => flightHeight(0.099),
    refuse("flight-impossible", { flightS: 0.099 }),
  ],
  [
    "height in metres",
    () => reactiveStrength(3, 0.2),
    () => reactiveStrength(2.9, 0.2),
    refuse("height-impossible", { heightCm: 2.9 }),
  ],
  [
    "landing past 150 cm",
    () => flightHeight(1, 150),
    () => flightHeight(1, 151),
    refuse("landing-impossible", { landingCm: 151 }),
  ],
  // In 0.2 s a body falls g·t²/2 = 19.6133 cm: a higher landing would be met still rising.
  [
    "landing met rising",
    () => flightHeight(0.2, 19.61),
    () => flightHeight(0.2, 19.62),
    refuse("landing-not-reached", { flightS: 0.2, landingCm: 19.62 }),
  ],
  [
    "landing too far down",
    () => flightHeight(0.2, -19.61),
    () => flightHeight(0.2, -19.62),
    refuse("landing-not-reached", { flightS: 0.2, landingCm: -19.62 }),
  ],
  [
    "height past 150 cm",
    () => reactiveStrength(150, 0.2),
    () => reactiveStrength(150.1, 0.2),
    refuse("height-impossible", { heightCm: 150.1 }),
  ],
  [
    "contact under 0.05 s",
    () => reactiveStrength(30, 0.05),
    () => reactiveStrength(30, 0.049),
    refuse("contact-impossible", { contactS: 0.049 }),
  ],
  [
    "contact past 2 s",
    () => reactiveStrength(30, 2),
    () => reactiveStrength(30, 2.01),
    refuse("contact-impossible", { contactS: 2.01 }),
  ],
  [
    "plate nobody measured",
    () => stackHeight([15, 5], plates),
    () => stackHeight([15, 7], plates),
    refuse("plate-not-measured", { place: 2, mass: 7, unit: "kg" }),
  ],
  [
    "a third of two plates",
    () => stackHeight([15, 15], plates),
    () => stackHeight([15, 15, 15], plates),
    refuse("plates-not-owned", { mass: 15, unit: "kg", owned: 2 }),
  ],
  [
    "attempt missed",
    () => attemptHeight({ ...attempt, heightCm: 30 }, []),
    () => attemptHeight({ ...attempt, heightCm: 30, cleared: false }, []),
    refuse("attempt-missed"),
  ],
  [
    "nothing to read a height from",
    () => attemptHeight({ ...attempt, flightS: 0.5 }, []),
    () => attemptHeight(attempt, []),
    refuse("attempt-without-height"),
  ],
  [
    "load under the bar",
    () => platesASide(20, 20, plates),
    () => platesASide(19.9, 20, plates),
    refuse("load-under-bar", { loadKg: 19.9, barKg: 20 }),
  ],
  [
    "rounded under the bar",
    () => roundDownToPlates(20, 20, plates),
    () => roundDownToPlates(19.9, 20, plates),
    refuse("load-under-bar", { loadKg: 19.9, barKg: 20 }),
  ],
  [
    "load between plates",
    () => platesASide(50, 20, plates),
    () => platesASide(52.5, 20, plates),
    refuse("load-not-on-plates", { loadKg: 52.5, barKg: 20 }),
  ],
  [
    "31 repetitions",
    () => repsInReserve(60, 30, 100),
    () => repsInReserve(60, 31, 100),
    refuse("reps-impossible", { reps: 31 }),
  ],
];

test.each(edges)(
  "%s is refused, and what stands just inside is answered",
  (_, inside, out, refusal) => {
    expect(inside().ok).toBe(true);
    expect(out()).toEqual(refusal);
  },
);

/** 1.5 m/s at no load, 0.01 m/s less per kg: 120 kg at 0.30 m/s. */
const line = (slopeVariance: number): LoadSpeedLine => ({
  intercept: 1.5,
  slope: -0.01,
  interceptVariance: 0,
  covariance: 0,
  slopeVariance,
  residualSd: 0.03,
  daySd: 0.02,
  spreadFreedom: 12,
  setSd: 0.02,
  firstSet: { offset: 0, sd: 0.03, freedom: 12 },
  setsUsed: 9,
  daysUsed: 4,
  lightestKg: 60,
  heaviestKg: 100,
  lastDay: 20_000,
  recent: { days: 4, lightestKg: 60, heaviestKg: 100 },
});

test("a best single is not read where the minimum speed is past the line's own start", () => {
  expect(strengthEstimate(line(1e-12), 1.49).ok).toBe(true);
  expect(strengthEstimate(line(1e-12), 1.5)).toEqual(
    refuse("strength-below-minimum", { minimumSpeed: 1.5 }),
  );
});

test("an interval of more than a tenth either way is refused with its width", () => {
  // Slope known to ±u (t·SD, as a share): limits are 120/(1 ± u), half their distance 120·u/(1 − u²).
  const slopeVariance = (share: number) => ((share * 0.01) / jStat.studentt.inv(0.95, 12)) ** 2;
  expect(strengthEstimate(line(slopeVariance(0.098)), 0.3).ok).toBe(true);
  expect(strengthEstimate(line(slopeVariance(0.12)), 0.3)).toEqual(
    refuse("strength-too-wide", { sets: 9, percent: 12 }),
  );
});
