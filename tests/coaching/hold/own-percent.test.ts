import { ownPercent } from "../../../src/coaching/hold/own-percent";

test("a contact of 222 ms against 195 ms is 14 % longer, counted as a loss of 13 on the log scale", () => {
  const counted = -100 * Math.log(222 / 195);
  expect(ownPercent("contact time", counted)).toBeCloseTo(100 * (222 / 195 - 1), 10);
});

test("every other value differs as it counts", () => {
  expect(ownPercent("jump height", -6)).toBe(-6);
  expect(ownPercent(undefined, 2)).toBe(2);
});
