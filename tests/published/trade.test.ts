import { runningLoss } from "../../src/coaching/bar-speed/stop-rep";
import { velocityLoss } from "../../src/coaching/bar-speed/velocity-loss";
import { platesASide, roundDownToPlates } from "../../src/coaching/blocks/plate-loading";
import { chartShares, singleFromSet } from "../../src/coaching/blocks/repetition-load";
import { flightHeight } from "../../src/coaching/jumps/flight-height";
import { reactiveStrength } from "../../src/coaching/jumps/reactive-strength";
import { kgFromPounds, poundsFromKg } from "../../src/coaching/units/mass";
import { inBase, unitOf } from "../../src/rows/value/units";
import { expectWithin, figureOf, formula } from "./figure-of";
import jumps from "./jump-physics.json";
import lifts from "./repetitions-and-plates.json";
import speed from "./velocity-loss.json";

test.each(speed.cases)("loss of $speeds is from the fastest to the last", ({ speeds, loss }) => {
  expectWithin(figureOf(velocityLoss(speeds)), loss, speed.tolerance);
});

/** Repetition at which VELOCITY_LOSS finds the cap reached; null where it leaves the cell blank. */
function firstAtCap(speeds: readonly number[], cap: number) {
  const [[, first]] = formula("VELOCITY_LOSS", [speeds], cap) as [[number, number | ""]];
  return first === "" ? null : first;
}

test("running loss, and the repetition that reaches each cap", () => {
  const { speeds, running, stops } = speed.cases[0]!;
  const found = runningLoss(speeds);
  expect(found).toHaveLength(running!.length);
  running!.forEach((loss, index) => {
    expectWithin(found[index]!, loss, speed.tolerance);
  });
  for (const [cap, rep] of stops!) expect(firstAtCap(speeds, cap!)).toBe(rep);
});

test.each(speed.edges)("a cap of $cap is reached by $speeds", ({ speeds, cap, stop }) => {
  expect(firstAtCap(speeds, cap)).toBe(stop);
});

test.each(speed.secondInARow)(
  "a set is not ended by one repetition past a cap of $cap: $speeds",
  ({ speeds, cap, first, second }) => {
    const [[, one, two]] = formula("VELOCITY_LOSS", [speeds], cap) as [unknown[]];
    expect([one, two]).toEqual([first, second]);
  },
);

test.each(speed.groupMeans.pairs)("a fall from %d to %d m/s is %d", (from, to, loss) => {
  expectWithin(figureOf(velocityLoss([from!, to!])), loss!, speed.groupMeans.tolerance);
});

test.each(jumps.level)("%d s in the air is %d cm", (flightS, heightCm) => {
  expectWithin(figureOf(flightHeight(flightS!)), heightCm!, jumps.tolerance);
});

test("ten milliseconds more on half a second read 1.24 cm more", () => {
  const more = figureOf(flightHeight(0.51)) - figureOf(flightHeight(0.5));
  expectWithin(more, jumps.timingErrorCm, jumps.tolerance);
});

test("half a second onto 30 cm is 47.5 cm", () => {
  const { flightS, landingCm, heightCm, tolerance } = jumps.raised;
  expectWithin(figureOf(flightHeight(flightS, landingCm)), heightCm, tolerance);
});

test.each(jumps.reactive.cases)("%d cm after %d s of contact is %d m/s", (cm, contactS, index) => {
  expectWithin(figureOf(reactiveStrength(cm!, contactS!)), index!, 1e-9);
});

test.each(lifts.epley)("%d kg × %d is a single of %d kg", (kg, reps, single) => {
  expectWithin(figureOf(singleFromSet(kg!, reps!)), single!, lifts.tolerance);
});

test.each(lifts.epleyPrinted)(
  "%d kg × %d, printed as %d with a factor cut short",
  (kg, reps, single) => {
    // The factor .0333 stands 1/30 000 under 1/30: the gap is load × reps / 30 000.
    expectWithin(figureOf(singleFromSet(kg!, reps!)), single!, (kg! * reps!) / 30_000 + 1e-6);
  },
);

test("the handbook's chart, one to ten repetitions", () => {
  expect(chartShares.map((share) => Math.round(share * 100))).toEqual(lifts.chart);
});

const plates = lifts.plates.massesKg.map((massKg, row) => ({
  row,
  massKg,
  thicknessCm: 2,
  owned: null,
}));

test.each(lifts.plates.loads as [number, number[]][])("%d kg on a 20 kg bar", (kg, side) => {
  expect(figureOf(platesASide(kg, 20, plates))).toEqual(side);
});

test.each(lifts.plates.roundDown)("%d kg goes down to %d kg, ties too", (kg, down) => {
  expect(figureOf(roundDownToPlates(kg!, 20, plates))).toBeCloseTo(down!, 9);
});

test.each(lifts.units.pounds)("%d lb is %d kg", (pounds, kg) => {
  expectWithin(kgFromPounds(pounds!), kg!, 1e-8);
});

test("450 mm is 17.716535 in; 20 kg is 44.092452 lb", () => {
  const [inches, cm] = lifts.units.inches[0]!;
  expectWithin(inBase(inches!, unitOf("in")!), cm!, 2e-6);
  expectWithin(poundsFromKg(20), lifts.units.twentyKgInPounds, 5e-7);
});
