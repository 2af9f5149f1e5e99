import { cellAddress } from "../../rows/value/cell-address";
import type { Written } from "../workbook";
import { writtenText } from "./cell-text";
import { type PlannedLine, typedColumn, type WeekColumn, weekColumns } from "./plan-lines";
import { type CellToWrite, wholeRow } from "./row-of-week";
import type { WeekTab } from "./week-tab";
import { earlierTexts, type WrittenBefore } from "./written-before";

/** A planned line and the row of the tab that is its own. */
export type LineOfTab = {
  readonly tab: WeekTab;
  readonly row: number;
  readonly name: string;
  readonly line: PlannedLine;
};

/** What writing one planned line would do to its row. */
export type LineMerge = {
  readonly cells: readonly CellToWrite[];
  /** Cells of ours that hold already what is planned. */
  readonly standing: readonly CellToWrite[];
  /** Columns in which the coach's own cell differs from the plan and stays. */
  readonly own: readonly WeekColumn[];
  /** What will be ours in the line once the cells are written. */
  readonly written: WrittenBefore[string];
};

const plannedColumns = weekColumns.filter((column) => column !== typedColumn);

/** A line that does not stand in the tab yet: all of its row is written. */
export function newLine(given: LineOfTab): LineMerge {
  const wanted = cellsOf(given);
  const written = plannedColumns.map((column) => [column, [writtenText(wanted(column))]]);
  return {
    cells: wholeRow(given.tab, given.row, wanted),
    standing: [],
    own: [],
    written: Object.fromEntries(written),
  };
}

/** A line in its row: a cell is replaced only while it still holds what was written there before. */
export function standingLine(given: LineOfTab, before: WrittenBefore): LineMerge {
  const { tab, row, name } = given;
  const wanted = cellsOf(given);
  const cells: CellToWrite[] = [];
  const standing: CellToWrite[] = [];
  const own: WeekColumn[] = [];
  const written: Record<string, readonly string[]> = {};
  for (const column of plannedColumns) {
    const cell = { row, column: tab.columnOf[column], value: wanted(column) };
    const text = writtenText(cell.value);
    const now = tab.text(row, cell.column);
    const earlier = earlierTexts(before, name, column);
    const isOurs = now === text || earlier.includes(now);
    // Remembered still: should the coach put our text back, the cell is ours again.
    written[column] = isOurs ? [text] : earlier;
    if (!isOurs) own.push(column);
    else if (now === text) standing.push(cell);
    else cells.push(cell);
  }
  return { cells, standing, own, written };
}

/** What is planned for each column of a line; the typed one is the coach's. */
function cellsOf({ tab, row, name, line }: LineOfTab): (column: WeekColumn) => Written {
  const planned = line.cells(tab.unit);
  return (column) => {
    if (column === "line") return name;
    if (column === "typed") return "";
    const cell = planned[column];
    return typeof cell === "function"
      ? cell((other) => cellAddress(row, tab.columnOf[other]))
      : cell;
  };
}
