import { dayColumn } from "../column/day-column";
import { textColumn } from "../column/text-column";
import { IssueLog } from "../issue-log";
import { isBlankLine } from "../table/read-lines";
import { beginsSummary, namesSummary, sumsUp } from "../table/summary-lines";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { namesJump } from "./lift-in-words";
import { loadMeaning } from "./load-meaning";
import { SchemeExpander } from "./scheme-expander";
import { type SchemeRow, schemeRow } from "./scheme-row";
import { orderFromWords } from "./shorthand/scheme-order";
import type { TabAnswers } from "./tab-answers";
import { Unfolded } from "./unfolded";
import { jumpCell } from "./wide/jump-cell";
import { withWords } from "./with-words";

/**
 * A log with one row for several sets ("105x5x4+1x3", or a column of how many sets), written out as
 * one flat row a set; for `Jumps`, the rows of the same log that are jumps.
 */
export function expandSchemes(view: TableView, table: "Sets" | "Jumps", tab: TabAnswers): Unfolded {
  const { cells, fields } = view;
  const into = new Unfolded(table, cells, view.headerRow);
  if (table === "Sets") into.passesOver = () => true;
  into.markHeadings(view.first);
  const scheme = (fields.scheme ?? fields.load)!;
  into.describe("load", loadMeaning(fields.load ?? scheme));
  for (const field of ["speed", "reserve", "effort", "bar"]) {
    const column = fields[field];
    if (column !== undefined) into.describe(field, column);
  }
  // Days are settled here, as rows copy one another by weekday; what is wrong is said by the flat rows.
  const quiet = { ...view, log: new IssueLog("Sets") };
  const readDay = dayColumn(quiet, fields.day, false);
  const readName = textColumn(quiet, fields.athlete);
  const isSummary = summaryRows(view);
  const expand = new SchemeExpander(view, into, tab, orderFromWords(scheme.heading));
  for (let row = view.first; row < view.end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    const read = isSummary(line)
      ? null
      : schemeRow(view, line, row, scheme.index, readDay(line, row), readName(line, row));
    if (read === null || namesJump(read.exercise) !== (table === "Jumps"))
      into.mark(row, "heading");
    else if (table === "Jumps") jumpOf(into, read);
    else {
      seeUnread(view, into, row);
      expand.sets(read);
    }
  }
  return into;
}

/** Tells rows of sums, where no athlete has their name. */
function summaryRows(view: TableView): (line: readonly unknown[]) => boolean {
  const { athlete } = view.fields;
  const sums = sumsUp(view);
  return (line) => {
    const own = line[athlete!.index];
    return (beginsSummary(line, athlete) && (isBlank(own) || namesSummary(own))) || sums(line);
  };
}

/** Single repetitions and numbers of sets have no place beside a scheme. */
function seeUnread(
  { cells, fields, headerRow, repColumns }: TableView,
  into: Unfolded,
  row: number,
) {
  for (const column of [...repColumns, fields.set, fields.rep])
    if (column !== undefined && !isBlank(cells[row]![column.index]))
      into.unread.see(headerRow, row, column.index);
}

/** A jump kept in the log of sets: its stack or height stands where the scheme would. */
function jumpOf(
  into: Unfolded,
  { row, line, scheme, shared, note, athlete, day, others }: SchemeRow,
): void {
  into.mark(row, "data");
  const parsed = jumpCell(line[scheme], []);
  if (parsed.problem !== null) into.report(parsed.problem, row, scheme);
  // A jump has no speed and no set: what stands in such columns is said in its note.
  const said = withWords(note, others(), scheme);
  const done = parsed.attempts.length > 0;
  const words = [parsed.note, done ? "" : said?.[0]].filter(Boolean).join("; ");
  // Words in place of a jump say which jump they are of.
  const named = done || words === "" ? words : `${String(shared.exercise![0]).trim()}: ${words}`;
  into.note(row, scheme, athlete, day, "day", named);
  // A log says what was jumped on; only "o" or "x" says whether it was cleared.
  const marked = /\d\s*[ox]{1,4}-?(?=\s|\/|$)/i.test(String(line[scheme]));
  for (const { stack, height, cleared } of parsed.attempts)
    into.emit(row, {
      day: shared.day,
      minute: shared.minute,
      athlete: shared.athlete,
      test: shared.exercise,
      stack: [stack, scheme],
      height: [height, scheme],
      cleared: marked ? [cleared, scheme] : undefined,
      note: said,
    });
}
