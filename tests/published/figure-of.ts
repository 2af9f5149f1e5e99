import { catalogue } from "../../src/catalogue";
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

/** What a formula gives in cells. */
export const formula = (name: string, ...args: readonly unknown[]): unknown =>
  catalogue.find((entry) => entry.name === name)!.compute(args);

/** The figures of a formula that names each in its first column, by that name. */
export const namedFigures = (name: string, ...args: readonly unknown[]) =>
  new Map(
    (formula(name, ...args) as [string, number, number, number][]).map(([figure, ...values]) => [
      figure,
      values,
    ]),
  );

/** Values as a range of one column. */
export const column = (values: readonly number[]): number[][] => values.map((value) => [value]);
