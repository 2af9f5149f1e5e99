import { createHash } from "node:crypto";
import { cellName, rectangle } from "../../a1";
import type { CellData, WorkbookData } from "../../workbook-data";

/**
 * The add-on's own formulas fill cells around them, and other programs do not know these functions.
 * LibreOffice 7.4 shows the last values of such a formula only when it is written as a plain one with
 * plain values in the cells around it; so the file also remembers which values are a formula's, by
 * range and checksum. A value typed over in another program no longer fits and stays typed.
 */
export type FillMark = { readonly tab: string; readonly ref: string; readonly sum: string };

/** Whether a formula calls one of the add-on's functions. */
export function callsOwn(formula: string, own: ReadonlySet<string>): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, "");
  return [...bare.matchAll(/([A-Za-z_]\w*)\s*\(/g)].some(([, name]) =>
    own.has(name!.toUpperCase()),
  );
}

/** Whether a formula fills more cells than its own. */
export function fillsMany(fills: CellData["fills"]): boolean {
  return (fills?.length ?? 0) > 1 || (fills?.[0]?.length ?? 0) > 1;
}

/** Marks for all the own formulas of a workbook that fill more than one cell. */
export function fillMarks({ tabs }: WorkbookData, own: ReadonlySet<string>): readonly FillMark[] {
  const marks: FillMark[] = [];
  for (const { name: tab, cells } of tabs) {
    for (const [row, line] of cells.entries()) {
      for (const [column, cell] of line.entries()) {
        const fills = cell?.fills;
        if (!cell?.formula || !fills || !fillsMany(fills) || !callsOwn(cell.formula, own)) continue;
        const end = cellName(row + fills.length - 1, column + fills[0]!.length - 1);
        marks.push({ tab, ref: `${cellName(row, column)}:${end}`, sum: sumOf(fills) });
      }
    }
  }
  return marks;
}

/** Whether the cells of a range still hold just what the formula filled them with. */
export function fits(
  lines: readonly (readonly (CellData | null)[])[],
  { ref, sum }: FillMark,
): boolean {
  const at = rectangle(ref, { rows: lines.length, columns: 0 });
  if (!at) return false;
  const fills: CellData["value"][][] = [];
  for (let row = at.startRow; row <= at.endRow; row++) {
    const line: CellData["value"][] = [];
    for (let column = at.startColumn; column <= at.endColumn; column++) {
      const cell = lines[row]?.[column] ?? null;
      const first = row === at.startRow && column === at.startColumn;
      if (!first && cell?.formula !== undefined) return false;
      line.push(cell?.value ?? null);
    }
    fills.push(line);
  }
  return sumOf(fills) === sum;
}

function sumOf(fills: NonNullable<CellData["fills"]>): string {
  // An empty text and an empty cell look alike in a file.
  const values = fills.map((line) => line.map((value) => (value === "" ? null : value)));
  return createHash("sha256").update(JSON.stringify(values)).digest("hex").slice(0, 32);
}
