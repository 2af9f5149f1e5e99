import { volumeLoad } from "../../src/coaching/blocks/volume-load";
import { reactiveStrength } from "../../src/coaching/jumps/reactive-strength";
import { trialReliability } from "../../src/coaching/reliability/trial-reliability";
import { mean } from "../../src/statistics/spread";
import { expectWithin, figureOf } from "./figure-of";
import reliability from "./reliability.json";
import published from "./session-volume.json";

test.each(published.volume.cases)("$says is $kg kg", ({ sets, kg }) => {
  expect(volumeLoad(sets)).toBe(kg);
});

test.each(published.takeOff.cases)(
  "$heightCm cm over $timeS s to take-off is printed as $printed",
  ({ heightCm, timeS, printed }) => {
    const index = figureOf(reactiveStrength(heightCm, timeS));
    expectWithin(index, printed, published.takeOff.tolerance);
  },
);

test("the plain coefficient of variation of two trials is not the one from logarithms", () => {
  const { first, second } = reliability.twoTrials;
  const { typicalError } = figureOf(trialReliability(first.map((one, at) => [one, second[at]!])));
  const plain = (100 * typicalError) / figureOf(mean([...first, ...second]));
  expectWithin(plain, published.plainVariation.expected, published.plainVariation.tolerance);
  expect(Math.abs(plain - reliability.percent.expected)).toBeGreaterThan(0.1);
});
