import type { Column } from "../header/column";
import { neededFields } from "../header/columns";
import type { Reading } from "../reading";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { dayFromText } from "../value/day-text";
import { isSummary, sumsUp } from "./summary-lines";

/**
 * A record, null for a row that was reported, "no-record" for one that was read and makes none of its
 * own: it went into the record before, or says that there was nothing.
 */
export type LineResult<Row> = Row | null | "no-record";

/**
 * Walks the rows of a table once and counts each exactly once. Padding at the end of a whole-column
 * range costs one look from the bottom up.
 *
 * @param cellReaders readers of the cells that a row given up at its first fault may have been left
 * with unread: what is wrong in those is told with it
 */
export function readLines<Row extends object>(
  view: TableView,
  readLine: (line: readonly unknown[], row: number) => LineResult<Row>,
  cellReaders: readonly CellReader<unknown>[] = [],
): Reading<Row> {
  const { cells, first, end, log } = view;
  const isHeading = headingLines(view);
  const tellOtherFaults = otherFaults(view, cellReaders);
  const records: Row[] = [];
  let rowsRead = 0;
  let rowsReported = 0;
  let rowsHeading = 0;
  let rowsBlank = cells.length - end;
  for (let row = 0; row < end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) rowsBlank++;
    else if (row < first || isHeading(line)) rowsHeading++;
    else {
      const before = log.issues.length;
      const result = readLine(line, row);
      if (result === null) {
        rowsReported++;
        if (!isOfWordsAlone(view, row, before)) tellOtherFaults(line, row, before);
      } else {
        rowsRead++;
        if (result !== "no-record") records.push(result);
      }
    }
  }
  return { records, issues: log.issues, rowsRead, rowsReported, rowsBlank, rowsHeading };
}

/** Whether a row is a comment across a table of days, which then is said, whatever was said of its cells from `before` on. */
function isOfWordsAlone({ cells, fields, log }: TableView, row: number, before: number): boolean {
  if ((fields.day ?? fields.from) === undefined) return false;
  const line = cells[row]!;
  const words = wordsAlone(line, fields.athlete);
  if (words < 0) return false;
  log.takeBack(before);
  log.add("words-alone", row, words, line[words], {}, true);
  return true;
}

/**
 * Tells what else is wrong in a row that was given up, so that a coach mends it once. Of a row that
 * repeats another all was said there; a cell is told of once, though several rows may be read from it.
 */
function otherFaults(
  { log }: TableView,
  cellReaders: readonly CellReader<unknown>[],
): (line: readonly unknown[], row: number, before: number) => void {
  const told = new Set<string>();
  return (line, row, before) => {
    const { issues } = log;
    const known = issues.slice(before);
    if (known.some(({ code }) => code === "doubled-row")) return;
    for (const { cell } of known) told.add(cell);
    const so = issues.length;
    for (const read of cellReaders) read(line, row);
    for (const issue of log.takeBack(so)) {
      if (told.has(issue.cell)) continue;
      told.add(issue.cell);
      // Nothing of the row counts, whatever else is wrong in it.
      issues.push({ ...issue, dropsRow: true });
    }
  };
}

/** Tells headings printed again, and sums and averages, from rows of data. */
function headingLines(view: TableView): (line: readonly unknown[]) => boolean {
  const { fields } = view;
  const heads = neededFields[view.table as "Sets"].map((field) => fields[field]?.index ?? -1);
  const headLine = view.cells[view.headerRow] ?? [];
  const sums = sumsUp(view);
  return (line) => {
    const lead = line[heads[0]!];
    const isOfWords = typeof lead === "string" || isBlank(lead);
    return (
      (isOfWords &&
        (isHeadingAgain(line, headLine, heads) || isSummary(line, heads, fields.athlete))) ||
      sums(line)
    );
  };
}

/** Words that are alone in a row are a name that was begun with, where they are so few. */
const fewWords = 3;

/** Column of the words that a row holds and nothing else, as a comment across the tab; −1 where it is none. */
export function wordsAlone(line: readonly unknown[], athlete: Column | undefined): number {
  const at = line.findIndex((cell) => !isBlank(cell));
  const words = line[at];
  if (typeof words !== "string" || !/\p{L}{2}/u.test(words) || dayFromText(words) !== null)
    return -1;
  if (at === athlete?.index && words.trim().split(/\s+/).length < fewWords) return -1;
  return line.every((cell) => isBlank(cell) || cell === false || cell === words) ? at : -1;
}

/** Nothing in any cell; an unticked box counts as nothing, as whole columns of them are padding. */
export function isBlankLine(line: readonly unknown[]): boolean {
  for (let index = 0; index < line.length; index++) {
    const cell = line[index];
    if (cell !== "" && cell !== false && !isBlank(cell)) return false;
  }
  return true;
}

function isHeadingAgain(
  line: readonly unknown[],
  head: readonly unknown[],
  heads: readonly number[],
): boolean {
  for (const index of heads) if (line[index] !== head[index] || isBlank(line[index])) return false;
  return true;
}
