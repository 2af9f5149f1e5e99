import fc from "fast-check";
import { platesASide, roundDownToPlates } from "../../../src/coaching/blocks/plate-loading";
import type { Plate } from "../../../src/coaching/record/plate";
import { kgFromPounds, poundsFromKg } from "../../../src/coaching/units/mass";

const bar = kgFromPounds(45);
const stamped = [45, 35, 25, 10, 5, 2.5];
const rack: readonly Plate[] = stamped.map((pounds, at) => ({
  row: at + 2,
  massKg: kgFromPounds(pounds),
  thicknessCm: 3,
  owned: 6,
}));
const built = (pounds: number) => {
  const rounded = roundDownToPlates(kgFromPounds(pounds), bar, rack);
  if (!rounded.ok) throw new Error(rounded.refusal.code);
  const side = platesASide(rounded.value, bar, rack);
  if (!side.ok) throw new Error(side.refusal.code);
  return { pounds: poundsFromKg(rounded.value), side: side.value.map(poundsFromKg) };
};

test.each([
  // 225 lb is the bar with two 45s a side; 227 lb is less than a pair of 2.5 more, 230 lb is one.
  [225, 225, [45, 45]],
  [227, 225, [45, 45]],
  [230, 230, [45, 45, 2.5]],
  [190, 190, [45, 25, 2.5]],
  [135, 135, [45]],
  [45, 45, []],
])("a bar of %p lb is built as %p lb from plates stamped in pounds", (wanted, made, side) => {
  const found = built(wanted);
  expect(found.pounds).toBeCloseTo(made, 6);
  expect(found.side).toHaveLength(side.length);
  for (const [at, plate] of side.entries()) expect(found.side[at]).toBeCloseTo(plate, 6);
});

test("what pairs of plates make is built whole, whether they are stamped in pounds or kilograms", () => {
  const counts = fc.tuple(...stamped.map(() => fc.integer({ min: 0, max: 3 })));
  const pairs = (unit: (mass: number) => number) => (each: readonly number[]) => {
    const plates = rack.map((plate, at) => ({ ...plate, massKg: unit(stamped[at]!) }));
    const loadKg = each.reduce((sum, count, at) => sum + 2 * count * plates[at]!.massKg, bar);
    const rounded = roundDownToPlates(loadKg, bar, plates);
    if (!rounded.ok) throw new Error(rounded.refusal.code);
    expect(rounded.value).toBeCloseTo(loadKg, 6);
    expect(platesASide(rounded.value, bar, plates).ok).toBe(true);
  };
  fc.assert(fc.property(counts, pairs(kgFromPounds)));
  fc.assert(
    fc.property(
      counts,
      pairs((mass) => mass),
    ),
  );
});
