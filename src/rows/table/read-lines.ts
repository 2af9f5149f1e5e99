import type { Column } from "../header/column";
import { neededFields } from "../header/columns";
import { plainWords } from "../header/header-words";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { dayFromText } from "../value/day-text";

const summary = new Set(
  "avg average mean max min sum total totals count sd median schnitt mittel mittelwert durchschnitt summe gesamt ø subtotal best bestwert range volume tonnage moyenne somme promedio suma totale gemiddelde summa".split(
    " ",
  ),
);

/** True for the first word of a row of averages or sums. */
export function namesSummary(cell: unknown): boolean {
  return summary.has(plainWords(cell).replace(/[.:]$/, ""));
}

/** Words of such rows that are first names too. */
export function mayBeName(cell: unknown): boolean {
  return /^m(ax|in)$/.test(plainWords(cell));
}

/** What a row is of; the best or greatest, and a day of volume, may be rows like the others. */
const labels = ["exercise", "test", "set"];
const mayBeRow = /^(?:best|max|min|volume)/;

/** Whether a row's lift, test or set, or what kind of run it was, is a sum or an average: "Total" beside the athlete's name. */
export function sumsUp({
  table,
  fields,
}: Pick<TableView, "table" | "fields">): (line: readonly unknown[]) => boolean {
  const columns = (table === "Runs" ? ["kind"] : labels).flatMap(
    (field) => fields[field]?.index ?? [],
  );
  // The same few words stand down a column.
  const seen = new Map<string, boolean>();
  const sums = (cell: unknown) => {
    if (typeof cell !== "string" || cell === "") return false;
    if (!seen.has(cell)) seen.set(cell, namesSummary(cell) && !mayBeRow.test(plainWords(cell)));
    return seen.get(cell)!;
  };
  return (line) => columns.some((index) => sums(line[index]));
}

/** "Summe: 5 Athleten", "Total athletes: 5", "5 runners": how many there are. */
const counted =
  /^(?:(?:sum|summe|total|gesamt|anzahl|count)\b\D*\d+\D*|\d+ (?:athletes?|athleten|runners?|läufer))$/i;

/** True for a row that begins so, where its first filled cell names no athlete. */
export function beginsSummary(
  line: readonly unknown[],
  athlete: Pick<Column, "index"> | undefined,
): boolean {
  const at = line.findIndex((cell) => !isBlank(cell));
  const words = line[at];
  if (typeof words === "string" && counted.test(words.trim())) return true;
  return namesSummary(line[at]) && !(at === athlete?.index && mayBeName(line[at]));
}

/**
 * A record, null for a row that was reported, "no-record" for one that was read and makes none of its
 * own: it went into the record before, or says that there was nothing.
 */
export type LineResult<Row> = Row | null | "no-record";

/**
 * Walks the rows of a table once and counts each exactly once. Padding at the end of a whole-column
 * range costs one look from the bottom up.
 */
export function readLines<Row extends object>(
  view: TableView,
  readLine: (line: readonly unknown[], row: number) => LineResult<Row>,
): Reading<Row> {
  const records: Row[] = [];
  let rowsRead = 0;
  let rowsReported = 0;
  let rowsHeading = view.first;
  let rowsBlank = view.cells.length - view.end;
  for (let row = 0; row < view.first; row++)
    if (isBlankLine(view.cells[row]!)) {
      rowsBlank++;
      rowsHeading--;
    }
  const heads = neededFields[view.table as "Sets"].map((field) => view.fields[field]?.index ?? -1);
  const headLine = view.cells[view.headerRow] ?? [];
  const first = heads[0]!;
  const sums = sumsUp(view);
  for (let row = view.first; row < view.end; row++) {
    const line = view.cells[row]!;
    const lead = line[first];
    if (
      (lead === "" || lead === undefined || lead === null || lead === false) &&
      isBlankLine(line)
    ) {
      rowsBlank++;
      continue;
    }
    const isHeading =
      (typeof lead === "string" || isBlank(lead)) &&
      (isHeadingAgain(line, headLine, heads) || isSummary(line, heads, view.fields.athlete));
    if (isHeading || sums(line)) {
      rowsHeading++;
      continue;
    }
    const before = view.log.issues.length;
    const result = readLine(line, row);
    if (result === null) {
      rowsReported++;
      const ofDays = view.fields.day ?? view.fields.from;
      const words = ofDays === undefined ? -1 : wordsAlone(line, view.fields.athlete);
      if (words >= 0) {
        view.log.issues.length = before;
        view.log.add("words-alone", row, words, line[words], {}, true);
      }
    } else {
      rowsRead++;
      if (result !== "no-record") records.push(result);
    }
  }
  return { records, issues: view.log.issues, rowsRead, rowsReported, rowsBlank, rowsHeading };
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

/** "AVG", "Schnitt", "total" in the row's first filled cell, and a needed cell left blank. */
function isSummary(
  line: readonly unknown[],
  heads: readonly number[],
  athlete: Column | undefined,
): boolean {
  let lacks = heads.length < 2;
  for (const index of heads) if (isBlank(line[index])) lacks = true;
  return lacks && beginsSummary(line, athlete);
}
