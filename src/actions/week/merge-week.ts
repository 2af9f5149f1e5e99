import { cellAddress } from "../../rows/value/cell-address";
import type { Written } from "../workbook";
import { writtenText } from "./cell-text";
import { deletedIn } from "./deleted-in";
import { lineName, type PlannedLine, type WeekColumn, weekColumns } from "./plan-lines";
import type { WeekTab } from "./week-tab";
import { earlierTexts, type WrittenBefore } from "./written-before";

/** One cell to write. */
export type CellToWrite = {
  readonly row: number;
  readonly column: number;
  readonly value: Written;
};

/** What writing a week would do to the tab. Nothing of the coach's is among the cells. */
export type WeekMerge = {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly removed: readonly string[];
  /** Planned lines the coach has deleted in the tab: they stay deleted until they are asked for. */
  readonly deleted: readonly PlannedLine[];
  readonly same: readonly string[];
  /** Addresses of the coach's own cells that differ from the plan and stay. */
  readonly kept: readonly string[];
  /** Of these the ones in a planned line, with whose line it is and in which column they stand. */
  readonly own: readonly {
    readonly athlete: string;
    readonly column: WeekColumn;
    readonly cell: string;
  }[];
  readonly cells: readonly CellToWrite[];
  /** Cells of ours that hold already what is planned. */
  readonly standing: readonly CellToWrite[];
  /** What will be ours in each line once the cells are written. */
  readonly written: WrittenBefore;
};

type Columns = Record<string, readonly string[]>;

/**
 * Compares a plan with the tab, line by line and cell by cell. A cell is replaced only while it still
 * holds what was written there before; lines never move; new ones go below the last row with anything
 * in it; a line no longer planned is cleared only when nothing in its row is the coach's; one that the
 * coach has deleted is not written again unless that is asked for.
 *
 * @param inScope says of a line's name whether this writing is about it
 * @param again lines deleted in the tab are written, too
 */
export function mergeWeek(given: {
  readonly tab: WeekTab;
  readonly before: WrittenBefore;
  readonly monday: string;
  readonly lines: readonly PlannedLine[];
  readonly inScope: (name: string) => boolean;
  readonly again: boolean;
}): WeekMerge {
  const { tab, before, monday, lines, inScope, again } = given;
  const isDeleted = deletedIn(tab, before);
  const deleted: PlannedLine[] = [];
  const added: string[] = [];
  const changed: string[] = [];
  const removed: string[] = [];
  const same: string[] = [];
  const kept: string[] = [];
  const own: WeekMerge["own"][number][] = [];
  const cells: CellToWrite[] = [];
  const still: CellToWrite[] = [];
  const written: Record<string, Columns> = {};
  const places = Object.values(tab.columnOf);
  const first = Math.min(...places);
  const last = Math.max(...places);
  /** A whole row in one run, also over columns put in between, so that no half of it can stand alone. */
  const wholeRow = (row: number, valueAt: (place: number) => Written) => {
    for (let place = first; place <= last; place++) {
      cells.push({ row, column: place, value: valueAt(place) });
    }
  };
  let freeRow = tab.freeRow;
  const planned = new Set<string>();

  for (const line of lines) {
    const name = lineName(monday, line.athlete, line.session);
    planned.add(name);
    if (isDeleted(name) && !again) {
      deleted.push(line);
      written[name] = before[name]!;
      continue;
    }
    const standing = tab.rowOf.get(name);
    const row = standing ?? freeRow++;
    const asPlanned = line.cells(tab.unit);
    const wanted = (column: WeekColumn): Written => {
      if (column === "line") return name;
      if (column === "typed") return "";
      const cell = asPlanned[column];
      return typeof cell === "function"
        ? cell((other) => cellAddress(row, tab.columnOf[other]))
        : cell;
    };
    const ours: Record<string, readonly string[]> = {};
    let touched = false;
    for (const column of weekColumns) {
      if (column === "typed") continue;
      const place = tab.columnOf[column];
      const text = writtenText(wanted(column));
      const now = standing === undefined ? null : tab.text(row, place);
      const earlier = earlierTexts(before, name, column);
      if (now === null || now === text) {
        ours[column] = [text];
        if (now !== null) still.push({ row, column: place, value: wanted(column) });
      } else if (earlier.includes(now)) {
        ours[column] = [text];
        touched = true;
        cells.push({ row, column: place, value: wanted(column) });
      } else {
        // Remembered still: should the coach put our text back, the cell is ours again.
        ours[column] = earlier;
        const cell = cellAddress(row, place);
        kept.push(cell);
        own.push({ athlete: line.athlete, column, cell });
      }
    }
    if (standing === undefined) {
      wholeRow(row, (place) => {
        const column = weekColumns.find((one) => tab.columnOf[one] === place);
        return column === undefined ? "" : wanted(column);
      });
    }
    written[name] = ours;
    (standing === undefined ? added : touched ? changed : same).push(name);
  }

  for (const name of Object.keys(before)) {
    if (!inScope(name) && isDeleted(name)) written[name] = before[name]!;
  }
  for (const [name, row] of tab.rowOf) {
    if (planned.has(name)) continue;
    if (!inScope(name)) {
      if (before[name]) written[name] = before[name];
      continue;
    }
    const coaches = coachCells(tab, before, name, row);
    if (coaches.length > 0) {
      kept.push(...coaches);
      if (before[name]) written[name] = before[name];
      continue;
    }
    removed.push(name);
    wholeRow(row, () => "");
  }
  return { added, changed, removed, deleted, same, kept, own, cells, standing: still, written };
}

/** Cells of a line's row that hold something we did not write there. */
function coachCells(tab: WeekTab, before: WrittenBefore, name: string, row: number): string[] {
  return tab
    .filled(row)
    .filter((place) => {
      const column = weekColumns.find((one) => tab.columnOf[one] === place);
      if (column === "line") return false;
      if (column === undefined || column === "typed") return true;
      return !(before[name]?.[column] ?? []).includes(tab.text(row, place));
    })
    .map((place) => cellAddress(row, place));
}
