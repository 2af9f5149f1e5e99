import { isoFromDay } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import type { SeasonPlan } from "../../coaching/season/season-plan";
import { cellAddress } from "../../rows/value/cell-address";
import { weekCellWords } from "../../words/season-tab";
import type { CellToWrite } from "../week/row-of-week";
import type { SeasonTab } from "./season-tab";

/** Texts that came from us, by athlete and week: a cell that holds anything else is the coach's. */
export type SeasonWritten = Readonly<Record<string, readonly string[]>>;

/** What writing a season would do to the tab. */
export type SeasonMerge = {
  readonly headings: readonly CellToWrite[];
  readonly cells: readonly CellToWrite[];
  /** Cells of ours that hold already what is planned. */
  readonly standing: readonly CellToWrite[];
  readonly kept: readonly string[];
  /** What may stand in our cells while they are being written. */
  readonly during: SeasonWritten;
  readonly after: SeasonWritten;
};

/**
 * Compares a season with the tab. Known athletes and weeks stay where they stand, new ones go below
 * and to the right of everything; a cell is replaced only while it still holds what was written there.
 */
export function mergeSeason(tab: SeasonTab, plan: SeasonPlan, before: SeasonWritten): SeasonMerge {
  const headings: CellToWrite[] = [];
  const cells: CellToWrite[] = [];
  const still: CellToWrite[] = [];
  const kept: string[] = [];
  const during: Record<string, readonly string[]> = { ...before };
  const after: Record<string, readonly string[]> = { ...before };
  const columnOf = new Map(tab.columnOf);
  let { freeRow, freeColumn } = tab;
  for (const { monday } of plan.athletes[0]?.weeks ?? []) {
    const week = isoFromDay(monday);
    if (columnOf.has(week)) continue;
    columnOf.set(week, freeColumn);
    headings.push({ row: tab.headingRow, column: freeColumn++, value: { day: week } });
  }
  for (const { athlete, weeks } of plan.athletes) {
    const standing = tab.rowOf.get(nameKey(athlete));
    const row = standing ?? freeRow++;
    if (standing === undefined) headings.push({ row, column: tab.athleteColumn, value: athlete });
    for (const week of weeks) {
      const monday = isoFromDay(week.monday);
      const column = columnOf.get(monday)!;
      const key = `${monday} ${nameKey(athlete)}`;
      const wanted = weekCellWords(week);
      const now = tab.text(row, column);
      const earlier = before[key];
      if (now === wanted) {
        after[key] = [wanted];
        still.push({ row, column, value: wanted });
      } else if (earlier ? earlier.includes(now) : now === "") {
        // What stood there is ours too until the writing is through, a blank of a new cell included.
        during[key] = [...new Set([...(earlier ?? []), now, wanted])];
        after[key] = [wanted];
        cells.push({ row, column, value: wanted });
      } else {
        kept.push(cellAddress(row, column));
      }
    }
  }
  return { headings, cells, standing: still, kept, during, after };
}
