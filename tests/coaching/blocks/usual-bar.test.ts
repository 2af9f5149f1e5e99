import { usualBarKg } from "../../../src/coaching/blocks/usual-bar";

test("a bar nobody weighs is 20 kg, or 45 lb where loads are in pounds", () => {
  expect(usualBarKg("kg")).toBe(20);
  // The international pound is 0.45359237 kg exactly (NIST Special Publication 811, 2008).
  expect(usualBarKg("lb")).toBeCloseTo(45 * 0.45359237, 9);
});
