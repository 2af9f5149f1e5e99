import { accept, type Outcome, refuse } from "../../../outcome";
import { rectangle } from "../../a1";
import type { CellData } from "../../workbook-data";
import { limits } from "../limits";
import { cellFromFile } from "./cell-from-file";
import { type FillMark, fits } from "./fill-marks";
import type { Sheet } from "./library";

/** Cells row by row; looks below the last filled row or beside the last filled column are left to the file. */
export function cellsOf(sheet: Sheet, marks: readonly FillMark[]): Outcome<(CellData | null)[][]> {
  const lines: (CellData | null)[][] = [];
  let refusal: Outcome<never> | null = null;
  let lastFilled = 0;
  let lastColumn = 0;
  const spilled: string[] = [];
  sheet.eachRow((row, number) => {
    if (refusal) return;
    const line: (CellData | null)[] = [];
    let filled = false;
    row.eachCell((cell, column) => {
      const made = cellFromFile(cell);
      if (made && (made.value !== null || made.formula !== undefined || made.note !== undefined)) {
        filled = true;
        lastColumn = Math.max(lastColumn, column);
        if (column > limits.columns) {
          refusal = refuse("too-many-columns", {
            tab: sheet.name,
            columns: column,
            most: limits.columns,
          });
          return;
        }
      }
      if (column > limits.columns) return;
      while (line.length < column) line.push(null);
      line[column - 1] = made;
      const held = cell.value as { shareType?: string; ref?: string } | null;
      if (held?.shareType === "array" && held.ref !== undefined) spilled.push(held.ref);
    });
    if (filled && number > limits.rows) {
      refusal = refuse("too-many-rows", { tab: sheet.name, rows: number, most: limits.rows });
    }
    if (refusal || number > limits.rows) return;
    while (lines.length < number) lines.push([]);
    lines[number - 1] = line;
    if (filled) lastFilled = number;
  });
  if (refusal) return refusal;
  lines.length = Math.min(lines.length, lastFilled);
  addEmptyLooks(lines, sheet, lastColumn);
  for (const mark of marks) {
    if (mark.tab === sheet.name && fits(lines, mark)) spilled.push(mark.ref);
  }
  for (const ref of spilled) gatherFills(lines, ref);
  for (const line of lines) while (line.length > 0 && line[line.length - 1] === null) line.pop();
  return accept(lines);
}

/** The library passes empty cells by, coloured ones too. */
function addEmptyLooks(lines: (CellData | null)[][], sheet: Sheet, columns: number): void {
  lines.forEach((line, at) => {
    const row = sheet.findRow(at + 1);
    for (let column = 1; row && column <= columns; column++) {
      const cell = line[column - 1] ? undefined : row.findCell(column);
      const look = cell ? cellFromFile(cell) : null;
      if (!look) continue;
      while (line.length < column) line.push(null);
      line[column - 1] = look;
    }
  });
}

/** An array formula's results stand in the cells around it: they are its own, not typed ones. */
function gatherFills(lines: (CellData | null)[][], ref: string): void {
  const at = rectangle(ref, { rows: lines.length, columns: limits.columns });
  const first = at && lines[at.startRow]?.[at.startColumn];
  if (!at || !first) return;
  const fills: CellData["value"][][] = [];
  for (let row = at.startRow; row <= Math.min(at.endRow, lines.length - 1); row++) {
    const line = lines[row]!;
    const fillsOfRow: CellData["value"][] = [];
    for (let column = at.startColumn; column <= at.endColumn; column++) {
      const cell = line[column] ?? null;
      fillsOfRow.push(cell?.value ?? null);
      if (!cell || cell === first) continue;
      const { value: _, formula: __, ...look } = cell;
      line[column] = Object.keys(look).length > 0 ? { value: null, ...look } : null;
    }
    fills.push(fillsOfRow);
  }
  lines[at.startRow]![at.startColumn] = { ...first, fills };
}
