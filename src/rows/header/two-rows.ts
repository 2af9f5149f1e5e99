import type { TableName } from "../table-name";
import { isBlank } from "../value/blank";
import { isDate } from "../value/is-date";
import { recogniseHeader } from "./recognise-header";

/** Headings of two rows joined column by column, the upper ones carried right; null when the second is data. */
export function twoRows(
  table: TableName,
  upper: readonly unknown[],
  lower: readonly unknown[],
): unknown[] | null {
  if (lower.some(isFigure) || lower.filter((cell) => !isBlank(cell)).length < 2) return null;
  let carried = "";
  return Array.from({ length: Math.max(upper.length, lower.length) }, (_, index) => {
    if (!isBlank(upper[index])) carried = String(upper[index]);
    return joinedHeading(table, upper[index], lower[index], carried);
  });
}

/** A date, or a number that counts no repetitions. */
const isFigure = (cell: unknown): boolean =>
  isDate(cell) ||
  (typeof cell === "number" && !(Number.isInteger(cell) && cell >= 1 && cell <= 20));

/** @param carried the heading above, or the last one left of it where it is blank, as merged cells are */
function joinedHeading(table: TableName, above: unknown, below: unknown, carried: string): unknown {
  if (isBlank(below)) return above ?? "";
  // "Rep speeds" over 1, 2, 3 are Rep 1 … Rep 3.
  const numbered = /^\s*(?:rep|r)?\s*(\d{1,2})\s*$/i.exec(String(below));
  if (numbered !== null && headsSpeeds(carried))
    return `rep ${numbered[1]}${/m\/s/.test(carried) ? " (m/s)" : ""}`;
  return isBlank(above) || recogniseWords(table, below) ? below : `${above} ${below}`;
}

const headsSpeeds = (heading: string): boolean =>
  /\b(rep|speed|speeds|m\/s|velocity|wdh|geschwindigkeit)/i.test(heading) ||
  recogniseHeader("Sets", [heading]).fields.speed !== undefined;

function recogniseWords(table: TableName, cell: unknown): boolean {
  return [table, "Sets" as const, "Jumps" as const].some(
    (one) => Object.keys(recogniseHeader(one, [cell]).fields).length > 0,
  );
}
