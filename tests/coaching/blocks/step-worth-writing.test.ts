import { stepWorthWriting } from "../../../src/coaching/blocks/plate-loading";

const plates = (...masses: number[]) =>
  masses.map((massKg) => ({ row: 1, massKg, thicknessCm: null, owned: null }) as never);

test("a step is what the plates make, but small change is not worth writing", () => {
  expect(stepWorthWriting(plates(20, 10, 5))).toBe(10);
  expect(stepWorthWriting(plates(20, 1.25))).toBe(2.5);
  expect(stepWorthWriting(plates(20, 0.5))).toBe(2.5);
  expect(stepWorthWriting([])).toBe(2.5);
});

test("a gym with pound plates steps by 5 lb", () => {
  // 0.45359237 kg a pound (international yard and pound agreement 1959).
  expect(stepWorthWriting(plates(45 * 0.45359237, 2.5 * 0.45359237))).toBeCloseTo(2.26796185, 9);
});
