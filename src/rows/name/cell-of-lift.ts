import { exerciseKey } from "../../coaching/record/exercise-key";
import type { Cells } from "../cells";
import { cellAddress } from "../value/cell-address";

/** A1 address of a lift's own cell in a set's row, from 1; the row's first where the lift is named elsewhere. */
export function cellOfLift(cells: Cells, row: number, exercise: string): string {
  const key = exerciseKey(exercise);
  const is = (cell: unknown) => typeof cell === "string" && exerciseKey(cell) === key;
  return cellAddress(row, Math.max(cells[row - 1]!.findIndex(is), 0) + 1);
}
