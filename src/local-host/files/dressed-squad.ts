import { squadHighlights } from "../../words/squad-highlights";
import type { CellData, TabData } from "../workbook-data";
import { dressedHeading } from "./dressed-heading";

/**
 * Shares as percent with one decimal, so that a small change is seen to be one: "−0.3 %", never "−0 %".
 * What rounds to nothing even so is "0 %", without a sign.
 */
const change = '[>=0.0005]+0.0 %;[<=-0.0005]"−"0.0 %;0 %';
const size = "[>=0.0005]0.0 %;0 %";
/** Columns of the squad formula: width in pixels, number format. */
const columns: readonly { readonly width: number; readonly format?: string }[] = [
  { width: 118 },
  { width: 68 },
  { width: 70 },
  { width: 138 },
  { width: 124 },
  { width: 68, format: change },
  { width: 66, format: size },
  { width: 66, format: size },
  { width: 120 },
  { width: 154 },
  { width: 84 },
  { width: 520 },
];
const room = 60;

/**
 * CSV files carry no looks, so a tab with the squad formula is dressed when it is read from one:
 * headings, shares as percent, widths that show the squad without scrolling at 1280 px, the words
 * highlighted. Only looks are added; no cell's content changes.
 */
export function dressedSquad(tab: TabData): TabData {
  const at = tab.cells.findIndex((line) => /^=SQUAD_TABLE\(/i.test(line[0]?.formula ?? ""));
  if (at < 1) return tab;
  const cells = tab.cells.map((line) => [...line]);
  const put = (row: number, column: number, look: Pick<CellData, "format" | "style">) => {
    while (cells.length <= row) cells.push([]);
    const line = cells[row]!;
    while (line.length <= column) line.push(null);
    line[column] = { ...(line[column] ?? { value: null }), ...look };
  };
  cells[at - 1]!.forEach((cell, column) => {
    if (cell) put(at - 1, column, { style: dressedHeading });
  });
  put(0, 0, { style: { bold: true } });
  // The day asked about, with what it is beside it.
  cells[0]!.forEach((cell, column) => {
    if (cell?.format !== "yyyy-mm-dd") return;
    put(0, column, { format: "d mmm yyyy" });
    if (cells[0]![column - 1]) put(0, column - 1, { style: { align: "right" } });
  });
  columns.forEach(({ format }, column) => {
    if (format === undefined) return;
    for (let row = at; row < at + room; row++) put(row, column, { format });
  });
  return {
    ...tab,
    cells,
    frozenRows: at,
    frozenColumns: 1,
    columnWidths: columns.map(({ width }) => width),
    conditionalFormats: squadHighlights("A1:L200").map(({ range, ...look }) => ({
      ranges: [range],
      ...look,
    })),
  };
}
