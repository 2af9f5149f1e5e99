import type { CellData, TabData } from "../workbook-data";
import { dressedHeading } from "./dressed-heading";

/** Columns of the row check in pixels: its sentences stand whole side by side at 1280 px. */
const widths = [90, 220, 400, 520];
/** Rows from the formula down with room for a second line: cells that a formula fills do not grow. */
const room = 30;
const twoLines = 38;

/** A tab with only the row check's formula, dressed when it is read from CSV as `dressedSquad` does. */
export function dressedRowCheck(tab: TabData): TabData {
  const at = tab.cells.findIndex((line) => /^=ROW_CHECK\(/i.test(line[0]?.formula ?? ""));
  const squad = tab.cells.some((line) => /^=SQUAD_TABLE\(/i.test(line[0]?.formula ?? ""));
  if (at < 1 || squad) return tab;
  const cells: (CellData | null)[][] = tab.cells.map((line) => [...line]);
  cells[at - 1] = cells[at - 1]!.map((cell) => cell && { ...cell, style: dressedHeading });
  for (let row = at; row < at + room; row++) {
    const line = cells[row] ?? [];
    cells[row] = widths.map((_, column) => ({
      ...(line[column] ?? { value: null }),
      style: { wrap: true },
    }));
  }
  const rowHeights = Object.fromEntries(Array.from({ length: room }, (_, i) => [at + i, twoLines]));
  return { ...tab, cells, frozenRows: at, columnWidths: widths, rowHeights };
}
