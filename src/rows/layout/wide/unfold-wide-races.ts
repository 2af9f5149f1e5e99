import { isoFromDay } from "../../../coaching/calendar/day";
import { plainWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { headsNotes } from "../../header/unknown-column";
import { isBlankLine } from "../../table/read-lines";
import { mayBeName, namesSummary } from "../../table/summary-lines";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import { saysNoValue } from "../../value/no-value";
import { yesNo } from "../../value/yes-no";
import type { Placed } from "../flat-rows";
import type { LayoutContext } from "../layout-context";
import { Unfolded } from "../unfolded";
import { dateHeaders } from "./date-header";

const speaks =
  /(?<!\p{L})(rac(?:e|es|ing)|meets?|meetings?|fixtures?|competitions?|wettk\p{L}*|rennen)(?!\p{L})/u;
const distance = /^\d[\d.,]*\s*(?:km|k|m|mi|miles?)?(?:\s*(?:sc|steeple(?:chase)?|hurdles))?$/i;

/**
 * Athletes down, races across: a row of dates, a row of the races' names above or below it, and in each
 * cell what the athlete runs, "1500", "x", "A". One race for each such cell. Null where dates do not run
 * across in one row with names beside it, or nothing speaks of races and the coach has not said so.
 */
export function unfoldWideRaces(context: LayoutContext): Unfolded | null {
  const { cells, end, title, said } = context;
  const [header, ...others] = dateHeaders(context);
  if (header === undefined || others.length > 0) return null;
  const { firstRow, lastRow, days, unsettled } = header;
  const titles = cells.slice(0, firstRow).flatMap((line) => line.map(plainWords));
  if (!said && !speaks.test([plainWords(title), ...titles].join(" | "))) return null;
  const columns = new Set([...days, ...unsettled].map(({ column }) => column));
  const nameRow = [lastRow + 1, firstRow - 1].find((row) => namesRaces(cells[row], columns));
  if (nameRow === undefined) return null;
  const beside = [...cells[firstRow]!.keys()].filter((column) => !columns.has(column));
  const heads = (of: (cell: unknown) => boolean) =>
    beside.filter((at) => [nameRow, firstRow].some((row) => of(cells[row]![at])));
  // A number or a group may stand before the name.
  const nameColumn = heads(headsAthletes)[0] ?? beside[0] ?? 0;
  const noteColumns = heads(isNotes);
  const into = new Unfolded("Races", cells, firstRow, context.leftAlone);
  const first = Math.max(nameRow, lastRow) + 1;
  into.markHeadings(first);
  for (const { row, column, code, facts } of unsettled) into.report(code, row, column, facts);
  for (let row = first; row < end; row++) {
    const line = cells[row]!;
    const who = line[nameColumn];
    if (isBlankLine(line)) continue;
    const isSummary = namesSummary(who) && !mayBeName(who);
    if (!isSummary) besideRaces(into, row, [who, nameColumn], columns, noteColumns);
    if (isSummary || !line.some((cell, at) => columns.has(at) && !isBlank(cell)))
      into.mark(row, "heading");
    else if (ofRaces(who)) noteOfRaces(into, row, who, days);
    else if (isBlank(who))
      into.report("needed-blank", row, nameColumn, { heading: "athlete" }, true);
    else for (const day of days) emitRace(into, line, row, day, [who, nameColumn], nameRow);
  }
  return into;
}

/** What stands in an athlete's row beside the races: notes are kept, the rest is not read. */
function besideRaces(
  into: Unfolded,
  row: number,
  [who, nameColumn]: Placed,
  columns: ReadonlySet<number>,
  noteColumns: readonly number[],
): void {
  into.source[row]!.forEach((cell, at) => {
    if (columns.has(at) || at === nameColumn || isBlank(cell) || cell === false) return;
    if (noteColumns.includes(at)) into.note(row, at, textOf(who), null, "table", textOf(cell));
    else into.unread.see(into.headerRow, row, at, true);
  });
}

/** "Venue", "Distance": of the races, not of an athlete. */
function noteOfRaces(into: Unfolded, row: number, what: unknown, days: readonly RaceDay[]): void {
  for (const { day, column } of days) {
    const cell = into.source[row]![column];
    if (!isBlank(cell)) into.note(row, column, "", day, "day", `${textOf(what)}: ${textOf(cell)}`);
  }
}

type RaceDay = { readonly day: number; readonly column: number };

function emitRace(
  into: Unfolded,
  line: readonly unknown[],
  row: number,
  { day, column }: RaceDay,
  who: Placed,
  nameRow: number,
): void {
  into.mark(row, "data");
  const cell = line[column];
  const text = textOf(cell);
  if (isBlank(cell) || cell === false || yesNo(cell) === false || saysNoValue(text)) return;
  const isDistance = distance.test(text) && !/^\d$/.test(text);
  const isClass = /^[abc]$/i.test(text);
  // Other words than a mark are kept; nobody runs where only a question stands.
  if (!isDistance && !isClass && yesNo(cell) === null && !/^[x×]$/i.test(text))
    into.note(row, column, textOf(who[0]), day, "day", text);
  if (/^\?+$/.test(text)) return;
  into.emit(row, {
    day: [isoFromDay(day), column],
    race: [into.source[nameRow]![column], column],
    who,
    ...(isDistance && { distance: [cell, column] }),
    ...(isClass && { matters: [cell, column] }),
  });
}

/** A row with words, and no dates, under or over at least two of the dates and beside no athlete. */
function namesRaces(line: readonly unknown[] | undefined, columns: ReadonlySet<number>): boolean {
  if (line === undefined) return false;
  const beside = line.some((cell, at) => !columns.has(at) && !isBlank(cell) && !headsNames(cell));
  const names = [...columns].filter(
    (at) => typeof line[at] === "string" && /\p{L}{3}/u.test(line[at]) && !dayOfCell(line[at]),
  );
  return !beside && names.length >= 2 && 2 * names.length >= columns.size;
}

const textOf = (cell: unknown): string => String(cell ?? "").trim();

/** What a row says of every race: its place, its distance, its start. */
const ofRaces = (cell: unknown): boolean =>
  headingLookup("Races").has(plainWords(cell)) ||
  /^(?:venue|place|location|where|ort|travel|transport)$/.test(plainWords(cell));

const isNotes = (cell: unknown): boolean => headsNotes.test(plainWords(cell));

const headsAthletes = (cell: unknown): boolean =>
  headingLookup("Athletes").get(plainWords(cell)) === "athlete";

const headsNames = (cell: unknown): boolean =>
  /^(?:races?|meets?|meeting|event|fixture|competition|wettkampf|rennen|athletes?|names?|runners?|athlet)$/.test(
    plainWords(cell),
  ) || isNotes(cell);
