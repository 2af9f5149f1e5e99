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
  const { headings, rowOf, columnOf } = placesOf(tab, plan);
  const cells: CellToWrite[] = [];
  const still: CellToWrite[] = [];
  const kept: string[] = [];
  const during: Record<string, readonly string[]> = { ...before };
  const after: Record<string, readonly string[]> = { ...before };
  for (const { athlete, weeks } of plan.athletes) {
    const row = rowOf.get(nameKey(athlete))!;
    for (const week of weeks) {
      const monday = isoFromDay(week.monday);
      const key = `${monday} ${nameKey(athlete)}`;
      const cell = { row, column: columnOf.get(monday)!, value: weekCellWords(week) };
      const now = tab.text(row, cell.column);
      const earlier = before[key];
      if (now !== cell.value && !(earlier ?? [""]).includes(now)) {
        kept.push(cellAddress(row, cell.column));
        continue;
      }
      after[key] = [cell.value];
      if (now === cell.value) {
        still.push(cell);
        continue;
      }
      // What stood there is ours too until the writing is through, a blank of a new cell included.
      during[key] = [...new Set([...(earlier ?? []), now, cell.value])];
      cells.push(cell);
    }
  }
  return { headings, cells, standing: still, kept, during, after };
}

/** Row of every athlete and column of every week, new ones below and to the right, with their headings. */
function placesOf(tab: SeasonTab, plan: SeasonPlan) {
  const { headingRow, athleteColumn, freeRow, freeColumn } = tab;
  const newWeeks = (plan.athletes[0]?.weeks ?? [])
    .map(({ monday }) => isoFromDay(monday))
    .filter((week) => !tab.columnOf.has(week))
    .map((week, at) => ({ week, column: freeColumn + at }));
  const newAthletes = plan.athletes
    .filter(({ athlete }) => !tab.rowOf.has(nameKey(athlete)))
    .map(({ athlete }, at) => ({ athlete, row: freeRow + at }));
  const headings: CellToWrite[] = [
    ...newWeeks.map(({ week, column }) => ({ row: headingRow, column, value: { day: week } })),
    ...newAthletes.map(({ athlete, row }) => ({ row, column: athleteColumn, value: athlete })),
  ];
  const rows = newAthletes.map(({ athlete, row }) => [nameKey(athlete), row] as const);
  const columns = newWeeks.map(({ week, column }) => [week, column] as const);
  return {
    headings,
    rowOf: new Map([...tab.rowOf, ...rows]),
    columnOf: new Map([...tab.columnOf, ...columns]),
  };
}
