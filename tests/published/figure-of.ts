import type { Outcome } from "../../src/outcome";

/** The figure; a refusal fails the test with its code. */
export function figureOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`refused: ${outcome.refusal.code}`);
  return outcome.value;
}

/** Fails when a figure is further off than the tolerance, absolute. */
export function expectWithin(found: number, expected: number, tolerance: number): void {
  expect(Number.isFinite(found)).toBe(true);
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(tolerance);
}

/** Fails when a figure is further off than a share of the expected one. */
export function expectDigits(found: number, expected: number, share: number): void {
  expectWithin(found, expected, Math.abs(expected) * share);
}
