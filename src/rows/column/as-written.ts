import type { Unit } from "../value/units";

/**
 * Between which bounds a number in a column means itself. A column that is not in the base unit of
 * its quantity has no such numbers: its reader shuts the bounds as soon as that is known.
 */
export type AsWritten = {
  readonly index: number;
  readonly whole: boolean;
  low: number;
  high: number;
};

/** True for a number that can be taken from its cell without a word. */
export function saysItself(cell: unknown, { low, high, whole }: AsWritten): boolean {
  return (
    typeof cell === "number" && cell >= low && cell <= high && (!whole || Number.isInteger(cell))
  );
}

/** Shuts the bounds unless the column is in its base unit. */
export function shutUnlessBase(written: AsWritten | null, unit: Unit | null): void {
  if (written === null || (unit !== null && unit.times === unit.per)) return;
  written.low = Number.POSITIVE_INFINITY;
  written.high = Number.NEGATIVE_INFINITY;
}
