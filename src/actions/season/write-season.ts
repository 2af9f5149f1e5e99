import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { type SeasonPlan, seasonPlan } from "../../coaching/season/season-plan";
import { cellAddress } from "../../rows/value/cell-address";
import { seasonTabWords, seasonWrittenWords, weekCellWords } from "../../words/season-tab";
import type { Done } from "../messages";
import { readWorkbook } from "../read-workbook";
import { blocksOfCells } from "../week/blocks-of-cells";
import type { CellToWrite } from "../week/row-of-week";
import type { Workbook } from "../workbook";
import { mergeSeason } from "./merge-season";
import { seasonKept } from "./season-kept";
import { ensureSeasonTab, readSeasonTab } from "./season-tab";

/** Writes the squad's season from the first race to the last. Throws a sentence without athletes or races. */
export function writeSeason(workbook: Workbook, today: Day): Done {
  // Read alone, too: an older season must not go over one that another coach has just written.
  return workbook.alone(() => {
    const { rows } = readWorkbook(workbook, today);
    if (rows.athletes.length === 0) throw new Error(seasonTabWords.noAthletes);
    const plan = seasonPlan(rows.athletes, rows.races, null, null);
    if (plan === null) throw new Error(seasonTabWords.noRaces);
    return writePlan(workbook, plan);
  });
}

/** What will be ours is remembered before the first cell: a writing that stops is completed by writing again. */
function writePlan(workbook: Workbook, plan: SeasonPlan): Done {
  const before = seasonKept.whole(workbook);
  const tab = readSeasonTab(workbook, ensureSeasonTab(workbook));
  const { headings, cells, standing, kept, during, after } = mergeSeason(tab, plan, before);
  if (cells.length > 0) seasonKept.put(workbook, during);
  // Shown as days before they are days: a writing that stops between the two is completed like any other.
  const columns = headings.filter(({ row }) => row === tab.headingRow).map((one) => one.column);
  const [first] = columns;
  if (first !== undefined)
    workbook.dress(tab.tab.id, tab.headingRow, newWeekWidths(headings, plan), first);
  for (const column of columns) {
    const cell = cellAddress(tab.headingRow, column);
    workbook.format(tab.tab.id, cell, "d mmm");
    workbook.alignLeft(tab.tab.id, cell);
  }
  for (const block of blocksOfCells(headings)) workbook.write(tab.tab.id, block);
  for (const block of blocksOfCells(cells, standing)) workbook.write(tab.tab.id, block);
  if (JSON.stringify(after) !== JSON.stringify(before)) seasonKept.put(workbook, after);
  const weeks = plan.athletes[0]?.weeks.length ?? 0;
  return { said: seasonWrittenWords(weeks, cells.length, kept, plan.unusualLength) };
}

/** As long as "week after". */
const quietest = 10;

/** Widths of the columns of new weeks, pixels: most weeks are quiet and narrow, a race is named in few lines. */
function newWeekWidths(headings: readonly CellToWrite[], plan: SeasonPlan): readonly number[] {
  return headings.flatMap(({ value }) => {
    if (typeof value !== "object" || !("day" in value)) return [];
    const weeks = plan.athletes.flatMap((athlete) =>
      athlete.weeks.filter(({ monday }) => isoFromDay(monday) === value.day),
    );
    const longest = Math.max(...weeks.map((week) => weekCellWords(week).length));
    return [longest > quietest ? 150 : 84];
  });
}
