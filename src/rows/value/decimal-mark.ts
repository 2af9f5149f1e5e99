import type { Cells } from "../cells";

export type DecimalMark = "." | ",";

/** Rows enough to tell by: the latest, as a coach may have moved from one mark to the other. */
const tellingRows = 2000;
const withComma = /^\s*\d*,\d{1,2}(?=[\s;]|$)/;
const withPoint = /^\s*\d*\.\d{1,2}(?=[\s;,]|$)/;

/**
 * The decimal mark that more cells typed as text carry; null where neither is ahead. Cells that hold a
 * number have no mark of their own.
 */
export function decimalMarkIn(tables: readonly Cells[]): DecimalMark | null {
  let ahead = 0;
  for (const cell of tables.flatMap((cells) => cells.slice(-tellingRows).flat())) {
    if (typeof cell !== "string") continue;
    if (withComma.test(cell)) ahead++;
    else if (withPoint.test(cell)) ahead--;
  }
  return ahead === 0 ? null : ahead > 0 ? "," : ".";
}
