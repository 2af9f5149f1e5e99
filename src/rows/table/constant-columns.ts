import type { Cells } from "../cells";
import type { Column } from "../header/column";
import { isBlankLine } from "./read-lines";
import { beginsSummary } from "./summary-lines";

/**
 * The rows with a column more for each meaning that holds for the whole table and has no column of
 * its own; blank rows stay blank, and rows of sums are nobody's. Places of the other cells are as they were.
 */
export function withConstants(
  cells: Cells,
  first: number,
  constants: Readonly<Record<string, string>>,
  athlete: Column | undefined,
): { readonly cells: Cells; readonly fields: Readonly<Record<string, Column>> } {
  const names = Object.keys(constants);
  if (names.length === 0) return { cells, fields: {} };
  const width = cells.reduce((most, line) => Math.max(most, line.length), 0);
  const more = names.map((name) => constants[name]);
  return {
    cells: cells.map((line, row) =>
      row < first || isBlankLine(line) || beginsSummary(line, athlete)
        ? line
        : [...line, ...Array<string>(width - line.length).fill(""), ...more],
    ),
    fields: Object.fromEntries(
      names.map((name, at) => [
        name,
        { index: width + at, unit: null, heading: name, words: name } satisfies Column,
      ]),
    ),
  };
}
