import type { LiftingSet } from "../../coaching/record/lifting-set";
import { textColumn } from "../column/text-column";
import type { Somebody } from "../issue-log";
import type { CellReader } from "../table-view";
import { isBlank } from "../value/blank";
import { isMark } from "../value/no-value";
import { athleteDay } from "./athlete-day";
import { reportBlank } from "./needed";
import { notDoneCells } from "./not-done";
import { type LineResult, wordsAlone } from "./read-lines";
import type { SetsBeingRead } from "./sets-being-read";

/** Reader of whose set of which lift a row is; "no-record" where it says that none was done. */
export function whoseSet(
  being: SetsBeingRead,
): CellReader<LineResult<Pick<LiftingSet, "day" | "athlete" | "exercise">>> {
  const { view, days } = being;
  const { fields } = view;
  const whose = athleteDay(view, days);
  const lift = textColumn(view, fields.exercise, true);
  const isComment = commentRows(being);
  const isUndone = undoneRows(being);
  return (line, row) => {
    if (isComment(line)) return null;
    const read = whose(line, row);
    // Read past a bad day, too: it may be carried on to the rows below.
    const exercise = lift(line, row);
    if (read === null) return null;
    if (isUndone(line, row, read)) return "no-record";
    if (exercise === "") return reportBlank(view, fields.exercise, row);
    return { day: read.day, athlete: read.athlete, exercise };
  };
}

/** Whether a row is words alone, which under merged cells are no set of the athlete above. */
function commentRows({ view }: SetsBeingRead): (line: readonly unknown[]) => boolean {
  const { note: _, ...others } = view.fields;
  const known = [...Object.values(others), ...view.repColumns];
  return (line) =>
    known.every(({ index }) => isBlank(line[index])) && wordsAlone(line, others.athlete) >= 0;
}

/** Whether no set of a row was done, planned or put off; keeps what its words say. */
function undoneRows({
  view,
  boxes,
}: SetsBeingRead): (line: readonly unknown[], row: number, of: Required<Somebody>) => boolean {
  const notDone = notDoneCells(view);
  const note = view.fields.note?.index ?? -1;
  return (line, row, of) => {
    const words = notDone(line);
    if (words.length === 0 && !boxes.isPlan(line, row, of)) return false;
    for (const column of [...words, note]) {
      const said = String(line[column] ?? "").trim();
      // Of a mark in a figure's place nothing is to be known but that there is none.
      if (said !== "" && (column === note || !isMark(said))) view.log.keep(row, column, said, of);
    }
    return true;
  };
}
