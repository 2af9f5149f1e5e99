import { columnLetters, columnNumber } from "../../a1";
import { largestTab } from "./largest-tab";

/** Texts, tab names in quotes and a table's columns in brackets: nothing in them is a reference. */
const untouched = /("(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^[\]]*\])/;
const columnsOnly = /(?<![\w.$:])(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})(?![\w(.!$])/g;
const rowsOnly = /(?<![\w.$:])(\$?)(\d{1,7}):(\$?)(\d{1,7})(?![\w(.!$])/g;
const oneCell = /(?<![\w.$])(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?![\w(.!])/g;

/**
 * A formula as it reads when it is filled from its own cell into one that many rows down and columns
 * to the right: references without "$" go along. One that would leave the tab is #REF!.
 *
 * @param formula with or without its leading "=", columns in capitals as files write them
 */
export function slidFormula(formula: string, down: number, right: number): string {
  const row = (fixed: string, digits: string) => {
    const at = Number(digits) + (fixed ? 0 : down);
    return at >= 1 && at <= largestTab.rows ? `${fixed}${at}` : null;
  };
  const column = (fixed: string, letters: string) => {
    const at = columnNumber(letters) + (fixed ? 0 : right);
    return at >= 0 && at < largestTab.columns ? `${fixed}${columnLetters(at)}` : null;
  };
  const joined = (first: string | null, sign: string, second: string | null) =>
    first === null || second === null ? "#REF!" : `${first}${sign}${second}`;
  const slid = (part: string) =>
    part
      .replace(columnsOnly, (_, fixed, left, fixedToo, end) =>
        joined(column(fixed, left), ":", column(fixedToo, end)),
      )
      .replace(rowsOnly, (_, fixed, top, fixedToo, end) =>
        joined(row(fixed, top), ":", row(fixedToo, end)),
      )
      .replace(oneCell, (found, fixed, letters, fixedToo, digits) => {
        // A name such as XYZ9999999 is no cell's.
        const cell =
          columnNumber(letters) < largestTab.columns && Number(digits) <= largestTab.rows;
        return cell ? joined(column(fixed, letters), "", row(fixedToo, digits)) : found;
      });
  return formula
    .split(untouched)
    .map((part, i) => (i % 2 === 0 ? slid(part) : part))
    .join("");
}
