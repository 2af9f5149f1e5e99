import { accept, type Outcome, refuse } from "../../outcome";
import { isBlank } from "./elementwise";
import { numberCell } from "./number-cell";

/**
 * Rows of numbers: blank rows and a first row of words alone are passed over, every other cell must
 * be a number.
 *
 * @param argument name of the formula's argument that the rows are of
 * @param nameOf what a cell is called in a refusal, by column and row of the range, the first is 1
 * @returns Refuses `argument-blank` without a row, `value-missing`, and else as `numberCell`.
 */
export function rowsOfNumbers(
  rows: readonly (readonly unknown[])[],
  argument: string,
  nameOf: (column: number, row: number) => string,
): Outcome<readonly (readonly number[])[]> {
  const numbers: (readonly number[])[] = [];
  for (const [at, cells] of rows.entries()) {
    if (cells.every(isBlank) || (at === 0 && isHeadings(cells))) continue;
    const own: number[] = [];
    for (const [column, cell] of cells.entries()) {
      const name = nameOf(column + 1, at + 1);
      const read = isBlank(cell) ? refuse("value-missing", { name }) : numberCell(cell, name);
      if (!read.ok) return read;
      own.push(read.value);
    }
    numbers.push(own);
  }
  return numbers.length > 0 ? accept(numbers) : refuse("argument-blank", { name: argument });
}

/** Words in every cell that is filled, "Trial 1"; none begins as a number does, as "0,62" or "-3". */
const isHeadings = (cells: readonly unknown[]) =>
  cells.every(
    (cell) => isBlank(cell) || (typeof cell === "string" && !/^\s*[-−+.,]*\d/.test(cell)),
  );
