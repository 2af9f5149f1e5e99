import type { Day } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import { withNames } from "../../rows/name/name-answers";
import { cellAddress } from "../../rows/value/cell-address";
import { noAnswerWords } from "../../words/diary-view";
import { type ReadWorkbook, sureEnough } from "../read-workbook";
import type { Tab } from "../workbook";

/** The note cell of an athlete's Diary row of one day; row and column from 1. */
export type AnswerPlace = {
  readonly tab: Tab;
  readonly row: number;
  readonly column: number;
  /** "Diary L44" */
  readonly cell: string;
};

/**
 * Where an answer about a day goes: the note column, found by its heading, of that athlete's row. Of
 * several rows of a day the last that is not private, for a private row's words are not shown.
 *
 * @returns the place, or the sentence that says why there is none
 */
export function diaryAnswerPlace(
  read: ReadWorkbook,
  athlete: string,
  day: Day,
): AnswerPlace | string {
  const diaries = read.tabs.filter(
    ({ table, sureness }) => table === "Diary" && sureness >= sureEnough,
  );
  if (diaries.length === 0) return noAnswerWords.noTable();
  const key = nameKey(athlete);
  const rows = diaries.flatMap(({ tab, understanding }) => {
    const { columns, reading, layout } = understanding;
    // A grid's notes are of a week, not of a day.
    const own =
      layout === "dates across" ? undefined : columns.find(({ field }) => field === "note");
    const column = own?.column ?? null;
    const records = reading.records.filter((record) => "newToday" in record);
    return withNames(records, read.answers.names)
      .filter((record) => record.day === day && nameKey(record.athlete) === key)
      .map((record) => ({ tab, column, row: record.row, hidden: record.private }));
  });
  const open = rows.filter(({ hidden }) => !hidden);
  const of = open[open.length - 1] ?? rows[rows.length - 1];
  if (of === undefined) {
    const names = diaries.map(({ tab }) => tab.name);
    return noAnswerWords.noRow(names, athlete, day);
  }
  const { tab, row, column } = of;
  if (column === null) return noAnswerWords.noNote(tab.name);
  return { tab, row, column, cell: `${tab.name} ${cellAddress(row, column)}` };
}
