import {
  isWeekTitle,
  takenBackWords,
  weekDifferenceWords,
  weekTitleWords,
} from "../../words/next-week-tab";
import type { NumberStyle } from "../../words/printed-numbers";
import type { Done } from "../messages";
import type { Workbook } from "../workbook";
import { blocksOfCells } from "./blocks-of-cells";
import { changesKept, forgetChanges } from "./coach-changes";
import { ensureWeekTab } from "./ensure-week-tab";
import { mergeWeek, type WeekMerge } from "./merge-week";
import {
  assertWritable,
  athleteOfLine,
  lineName,
  mondayOfLine,
  type PlannedLine,
} from "./plan-lines";
import { findWeekTab, presentWeekTab, readWeekTab } from "./week-tab";
import { earlierTexts, type WrittenBefore, writtenKept } from "./written-before";

/** A week's lines to stand in the tab. */
export type WeekToWrite = {
  /** "2026-06-29" */
  readonly monday: string;
  readonly lines: readonly PlannedLine[];
  /** Unit of mass for a tab that is still to be made. */
  readonly unit: NumberStyle["unit"];
  /** Only these athletes' lines; null for the whole squad. */
  readonly athletes: readonly string[] | null;
  /** Lines that the coach has deleted in the tab are written, too; left out, they stay deleted. */
  readonly again?: boolean;
};

/** What writing would change, without changing anything; null when there is no such tab yet. */
export function weekDifference(workbook: Workbook, week: WeekToWrite): WeekMerge | null {
  const tab = findWeekTab(workbook);
  if (!tab || workbook.values(tab.id).every((row) => row.every((cell) => cell === ""))) return null;
  return merged(workbook, week);
}

/**
 * Puts a week's lines into the tab, for a caller that writes alone. Only lines that differ; the
 * coach's own cells stay. What is about to be ours is remembered before the first cell is written, so
 * a writing that stops anywhere is completed by writing again, with no line lost or doubled.
 *
 * @param beforeCells done once the tab was read and nothing stands against writing
 */
export function putWeek(
  workbook: Workbook,
  week: WeekToWrite,
  beforeCells: () => void = () => {},
): Done {
  assertWritable(week.monday, week.lines);
  assertKept(workbook);
  ensureWeekTab(workbook, week.monday, week.unit);
  const merge = merged(workbook, week);
  beforeCells();
  carryOut(workbook, merge);
  retitle(workbook);
  return {
    said: weekDifferenceWords({
      added: merge.added.length,
      changed: merge.changed.length,
      removed: merge.removed.length,
      same: merge.same.length,
      kept: merge.kept,
      deleted: merge.deleted,
    }),
  };
}

/** Takes the lines of a week back out, but for rows in which something is the coach's; then it is proposed afresh. */
export function takeBackWeek(workbook: Workbook, monday: string): Done {
  return workbook.alone(() => {
    if (!findWeekTab(workbook)) {
      forgetChanges(workbook, monday);
      return { said: takenBackWords(0, []) };
    }
    assertKept(workbook);
    const merge = merged(workbook, { monday, lines: [], athletes: null });
    carryOut(workbook, merge);
    retitle(workbook);
    forgetChanges(workbook, monday);
    return { said: takenBackWords(merge.removed.length, merge.kept) };
  });
}

/** Throws a sentence, before anything is written, when what is kept of the weeks is damaged. */
function assertKept(workbook: Workbook): void {
  writtenKept.whole(workbook);
  changesKept.whole(workbook);
}

/** The title names the weeks that stand in the tab, as long as it is still ours. */
function retitle(workbook: Workbook): void {
  const { tab, rowOf, text } = readWeekTab(workbook, presentWeekTab(workbook));
  const mondays = [...new Set([...rowOf.keys()].flatMap((name) => mondayOfLine(name) ?? []))];
  const now = text(1, 1);
  if (mondays.length === 0 || !isWeekTitle(now)) return;
  const title = weekTitleWords(mondays.sort());
  if (title !== now) workbook.write(tab.id, { row: 1, column: 1, values: [[title]] });
}

function merged(
  workbook: Workbook,
  { monday, lines, athletes, again = false }: Omit<WeekToWrite, "unit">,
): WeekMerge {
  const tab = readWeekTab(workbook, presentWeekTab(workbook));
  const asked = athletes === null ? null : new Set(athletes);
  const scope = (name: string) =>
    name.startsWith(`${monday} `) && (asked === null || asked.has(athleteOfLine(name)));
  return mergeWeek({
    tab,
    before: writtenKept.read(workbook).value,
    monday,
    lines: lines.filter(({ athlete, session }) => scope(lineName(monday, athlete, session))),
    inScope: scope,
    again,
  });
}

function carryOut(workbook: Workbook, merge: WeekMerge): void {
  const { cells, standing, written } = merge;
  const before = writtenKept.whole(workbook);
  const same = JSON.stringify(before) === JSON.stringify(written);
  const tab = presentWeekTab(workbook);
  if (cells.length > 0) writtenKept.put(workbook, underWay(both(before, written), merge));
  for (const block of blocksOfCells(cells, standing)) workbook.write(tab.id, block);
  if (!same || cells.length > 0) writtenKept.put(workbook, written);
}

/** A row on its way in or out is not known by its name until it is done: were it gone then, nobody has deleted it. */
function underWay(all: WrittenBefore, { added, removed }: WeekMerge): WrittenBefore {
  const moving = new Set([...added, ...removed]);
  return Object.fromEntries(
    Object.entries(all).map(([name, columns]) => {
      const { line: _, ...others } = columns;
      return [name, moving.has(name) ? others : columns];
    }),
  );
}

/** Old and new texts together: while cells are being written either may stand there. */
function both(before: WrittenBefore, after: WrittenBefore): WrittenBefore {
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return Object.fromEntries(
    names.map((name) => {
      const columns = new Set([
        ...Object.keys(before[name] ?? {}),
        ...Object.keys(after[name] ?? {}),
      ]);
      return [
        name,
        Object.fromEntries(
          [...columns].map((column) => [
            column,
            [...new Set([...earlierTexts(before, name, column), ...(after[name]?.[column] ?? [])])],
          ]),
        ),
      ];
    }),
  );
}
