import { namedInBrackets, namedRunners } from "../../coaching/diary/named-runners";
import { nameKey } from "../../coaching/record/name-key";
import type { Cells } from "../cells";
import { cellAddress } from "../value/cell-address";

/**
 * A1 address of a name's own cell, where it may stand among others: in its row, else the nearest above, as in a block's title; else
 * the row's cell in the column of athletes. Rows and columns count from 1.
 */
export function cellOfName(cells: Cells, row: number, column: number | null, name: string): string {
  const key = nameKey(name);
  const is = (text: string) => nameKey(text) === key;
  const holds = (cell: unknown) =>
    typeof cell === "string" &&
    (is(cell) || [...namedRunners(cell), ...namedInBrackets(cell)].some(is));
  for (let at = row; at >= 1; at--) {
    const line = cells[at - 1]!;
    if (column !== null && holds(line[column - 1])) return cellAddress(at, column);
    const index = line.findIndex(holds);
    if (index >= 0) return cellAddress(at, index + 1);
  }
  return cellAddress(row, column ?? 1);
}
