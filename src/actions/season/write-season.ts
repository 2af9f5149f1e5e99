import * as z from "zod/mini";
import type { Day } from "../../coaching/calendar/day";
import { type SeasonPlan, seasonPlan } from "../../coaching/season/season-plan";
import { seasonTabWords, seasonWrittenWords } from "../../words/season-tab";
import { columnName } from "../cell-place";
import type { Done } from "../messages";
import { readWorkbook } from "../read-workbook";
import { recallLong, rememberLong } from "../remember-long";
import { blocksOfCells } from "../week/blocks-of-cells";
import type { Workbook } from "../workbook";
import { mergeSeason, type SeasonWritten } from "./merge-season";
import { ensureSeasonTab, readSeasonTab } from "./season-tab";

const key = "season";
const stored = z.record(z.string(), z.array(z.string()));

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
  const tab = readSeasonTab(workbook, ensureSeasonTab(workbook));
  const before = recallSeason(workbook);
  const { headings, cells, kept, during, after } = mergeSeason(tab, plan, before);
  if (cells.length > 0) remember(workbook, during);
  // Shown as days before they are days: a writing that stops between the two is completed like any other.
  const columns = headings.filter(({ row }) => row === tab.headingRow).map((one) => one.column);
  for (const column of columns) {
    workbook.format(tab.tab.id, `${columnName(column)}${tab.headingRow}`, "d mmm");
  }
  for (const block of blocksOfCells(headings)) workbook.write(tab.tab.id, block);
  for (const block of blocksOfCells(cells)) workbook.write(tab.tab.id, block);
  if (JSON.stringify(after) !== JSON.stringify(before)) remember(workbook, after);
  const weeks = plan.athletes[0]?.weeks.length ?? 0;
  return { said: seasonWrittenWords(weeks, cells.length, kept, plan.unusualLength) };
}

function recallSeason(workbook: Workbook): SeasonWritten {
  const text = recallLong(workbook, key);
  if (text === null) return {};
  try {
    return stored.parse(JSON.parse(text));
  } catch {
    // Of another version: all cells then count as the coach's, which loses nothing.
    return {};
  }
}

const remember = (workbook: Workbook, written: SeasonWritten) =>
  rememberLong(workbook, key, JSON.stringify(written));
