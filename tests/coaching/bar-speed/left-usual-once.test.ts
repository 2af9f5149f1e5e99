import {
  leftUsualOnce,
  type SetAgainstFirst,
  type SetToSet,
} from "../../../src/coaching/bar-speed/set-to-set";

// One odd set, or a session that fell away; figures are invented.

const later = (set: number, change: number, low: number | null, high: number | null) =>
  ({ set, change, usual: low, usualLow: low, usualHigh: high }) satisfies SetAgainstFirst;
const once = (leftUsualAtSet: number | null, ...sets: SetAgainstFirst[]) =>
  leftUsualOnce({ leftUsualAtSet, sets } as unknown as SetToSet);

test("one set alone left the usual where all after it lie in their ranges, bounds included", () => {
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, -0.02, -0.05, 0.01))).toBe(true);
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, -0.05, -0.05, 0.01))).toBe(true);
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, 0.01, -0.05, 0.01))).toBe(true);
});

test("a further set out of its range, slower or faster, is no set alone", () => {
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, -0.06, -0.05, 0.01))).toBe(false);
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, 0.02, -0.05, 0.01))).toBe(false);
  expect(
    once(2, later(2, -0.2, -0.04, 0.02), later(3, 0, -0.05, 0.01), later(4, -0.1, -0.06, 0)),
  ).toBe(false);
});

test("the last set, an unknown range, or no set that left: nothing shows that it was one alone", () => {
  expect(once(3, later(2, -0.01, -0.04, 0.02), later(3, -0.2, -0.05, 0.01))).toBe(false);
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, 0, null, null))).toBe(false);
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, 0, null, 0.01))).toBe(false);
  expect(once(2, later(2, -0.2, -0.04, 0.02), later(3, 0, -0.05, null))).toBe(false);
  expect(once(null, later(2, 0, -0.04, 0.02), later(3, 0, -0.05, 0.01))).toBe(false);
});
