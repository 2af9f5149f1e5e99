import { cellAddress } from "../../rows/value/cell-address";
import type { Written } from "../workbook";
import { type WeekColumn, weekColumns } from "./plan-lines";
import type { WeekTab } from "./week-tab";
import type { WrittenBefore } from "./written-before";

/** One cell to write. */
export type CellToWrite = {
  readonly row: number;
  readonly column: number;
  readonly value: Written;
};

/** A whole row in one run, also over columns put in between, so that no half of it can stand alone. */
export function wholeRow(
  tab: Pick<WeekTab, "columnOf">,
  row: number,
  valueIn: (column: WeekColumn) => Written,
): readonly CellToWrite[] {
  const places = Object.values(tab.columnOf);
  const first = Math.min(...places);
  return Array.from({ length: Math.max(...places) - first + 1 }, (_, at) => {
    const column = columnAt(tab, first + at);
    return { row, column: first + at, value: column === undefined ? "" : valueIn(column) };
  });
}

/** Addresses of what stands in a line's row and was not written there by us. */
export function coachCells(
  tab: WeekTab,
  written: WrittenBefore[string] | undefined,
  row: number,
): readonly string[] {
  const isCoachs = (place: number) => {
    const column = columnAt(tab, place);
    if (column === "line") return false;
    if (column === undefined || column === "typed") return true;
    return !(written?.[column] ?? []).includes(tab.text(row, place));
  };
  return tab
    .filled(row)
    .filter(isCoachs)
    .map((place) => cellAddress(row, place));
}

const columnAt = ({ columnOf }: Pick<WeekTab, "columnOf">, place: number) =>
  weekColumns.find((column) => columnOf[column] === place);
