import { isoFromDay } from "../../../coaching/calendar/day";
import { dayColumn, newDayAside } from "../../column/day-column";
import { textColumn } from "../../column/text-column";
import { IssueLog } from "../../issue-log";
import { isBlankLine } from "../../table/read-lines";
import { beginsSummary } from "../../table/summary-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import type { Placed } from "../flat-rows";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { Unfolded } from "../unfolded";
import { withBoxDropped } from "./box-dropped";
import { findTestColumns, type TestColumns } from "./find-test-columns";
import { jumpsInColumn } from "./jumps-in-column";
import { setInColumn } from "./set-in-column";
import type { TestColumn, Who } from "./test-column";
import { isJumpColumn } from "./test-heading";

/** Meanings that hold for all tests and lifts of a row. */
const ofWholeRow = new Set(
  "day minute athlete kind tool gym by drop landing note bar speedIs movedWell reserve effort".split(
    " ",
  ),
);

/**
 * One row an athlete and day, one column a test or a lift ("Box jump (cm)", "Drop jump contact ms",
 * "Squat" with shorthand cells). `unknown` are the columns without a meaning of their own. Null when
 * none of them is a test or lift.
 */
export function unfoldWideTests(
  given: TableView,
  table: "Sets" | "Jumps",
  unknown: readonly number[],
  { tab, massUnit }: Pick<LayoutContext, "tab" | "massUnit">,
): Unfolded | null {
  const view = table === "Jumps" ? withBoxDropped(given) : given;
  const { cells, fields, headerRow } = view;
  const ofLifts = table === "Sets";
  const found = findTestColumns(view, ofLifts, unknown, massUnit);
  const { columns } = found;
  if (columns.length === 0) return null;
  const tests = new Map(columns.map((column) => [column.index, column]));
  const into = describedRows(view, table, found);
  const sharedOf = sharedReader(view, table, found, into);
  const clearedOf = clearedCells(view);

  const setsOf = (line: readonly unknown[], row: number, { shared, who }: OfRow): boolean => {
    const took = columns.map((column) => setInColumn(into, row, line, column, shared, tab, who));
    return took.includes(true);
  };
  const jumpsOf = (line: readonly unknown[], row: number, { shared, who }: OfRow): boolean => {
    const groups = new Map<string, Shared>();
    for (const column of columns) jumpsInColumn(into, row, line, column, shared, groups, who);
    const cleared = clearedOf(line);
    if (cleared !== null && !takeCleared([...groups.values()], cleared))
      into.unread.see(headerRow, row, cleared[1]);
    for (const flat of groups.values()) into.emit(row, flat);
    return groups.size > 0;
  };

  for (let row = view.first; row < view.end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    if (beginsSummary(line, fields.athlete) || numbersOfTries(line, tests)) {
      into.mark(row, "heading");
      continue;
    }
    const ofRow = sharedOf(line, row);
    if (!(ofLifts ? setsOf : jumpsOf)(line, row, ofRow)) keepRest(into, row, ofRow);
  }
  return into;
}

type Shared = Record<string, Placed | undefined>;
/** What holds for all tests or lifts of a row. */
type OfRow = { readonly shared: Shared; readonly who: Who };

/** Rows to be filled, with what the headings say of each column. */
function describedRows(
  { cells, fields, headerRow, first }: TableView,
  table: "Sets" | "Jumps",
  { columns, headingOf, liftOf, isDerived }: TestColumns,
): Unfolded {
  const into = new Unfolded(table, cells, headerRow);
  into.markHeadings(first);
  const taken = new Set(columns.map(({ index }) => index));
  // Sets and jumps of one tab are each read by themselves.
  into.passesOver = (column) =>
    !taken.has(column) &&
    !(isDerived(column) && table === "Jumps") &&
    !isJumpColumn(headingOf(column)) &&
    (table === "Sets" ? liftOf(column) : liftInWords(headingOf(column))) === null;
  for (const [field, column] of Object.entries(fields))
    if (ofWholeRow.has(field)) into.describe(field, column);
  if (fields.cleared && table === "Jumps") into.describe("cleared", fields.cleared);
  const described = new Set<string>();
  for (const { heading, part } of columns) {
    // Of several columns of heights none speaks for the others.
    into.describe(part, { heading: described.has(part) ? part : heading, words: heading });
    described.add(part);
  }
  return into;
}

/** Reader of a row's day, athlete and the cells that hold for all of it; cells that nothing reads are seen as unread. */
function sharedReader(
  view: TableView,
  table: "Sets" | "Jumps",
  { columns, testOfRow, isDerived }: TestColumns,
  into: Unfolded,
): (line: readonly unknown[], row: number) => OfRow {
  const { fields, repColumns, headerRow } = view;
  const quiet = { ...view, log: new IssueLog(table) };
  const aside = newDayAside();
  const readDay = dayColumn(quiet, fields.day, false, aside);
  const readName = textColumn(quiet, fields.athlete);
  const readTest = textColumn(quiet, fields.test);
  const readElsewhere = new Set(columns.map(({ index }) => index));
  const isRead = (field: string, index: number) =>
    readElsewhere.has(index) || (table === "Jumps" && (field === "cleared" || isDerived(index)));
  const places = [...Object.entries(fields), ...Object.entries(repColumns)];
  return (line, row) => {
    const shared: Shared = {};
    for (const [field, { index }] of places) {
      const cell = line[index];
      if (ofWholeRow.has(field)) shared[field] = [cell, index];
      else if (field === "test" && testOfRow) shared.test = [readTest(line, row), index];
      else if (!isRead(field, index) && !isBlank(cell) && cell !== false)
        into.unread.see(headerRow, row, index);
    }
    const who: Who = { athlete: readName(line, row), day: readDay(line, row) };
    // Under merged cells, and in the order that the whole column or the coach settles.
    if (who.athlete !== "") shared.athlete = [who.athlete, fields.athlete!.index];
    if (who.day !== null) shared.day = [isoFromDay(who.day), fields.day!.index];
    if (aside.minute !== null && isBlank(shared.minute?.[0]))
      shared.minute = [aside.minute / 1440, fields.day!.index];
    return { shared, who };
  };
}

/** What stands in the cell that says whether a row's jump was cleared; null where it says nothing. */
function clearedCells({
  cells,
  fields: { cleared },
  first,
  end,
}: TableView): (line: readonly unknown[]) => Placed | null {
  if (cleared === undefined) return () => null;
  const { index } = cleared;
  // Boxes to tick of which none is ticked say nothing.
  const isTicked = cells.slice(first, end).some((line) => line[index] === true);
  return (line) => {
    const cell = line[index];
    return isBlank(cell) || (cell === false && !isTicked) ? null : [cell, index];
  };
}

/** Of a row without a set or jump: its note, and the row itself where its day or name cannot be read. */
function keepRest(into: Unfolded, row: number, { shared, who }: OfRow): void {
  const { note } = shared;
  if (note !== undefined && !isBlank(note[0]))
    into.note(row, note[1], who.athlete, who.day, "day", String(note[0]).trim());
  // The reader of rows says what is wrong with a day or a name.
  if (who.day === null || who.athlete === "") into.emit(row, shared);
}

/**
 * A column that says whether it was cleared speaks for the row's one box or stack, where that cell does
 * not say it itself; false where there is none or more than one.
 */
function takeCleared(
  jumps: readonly Record<string, Placed | undefined>[],
  cleared: Placed,
): boolean {
  const onto = jumps.filter(
    ({ stack, height, test }) =>
      stack !== undefined || (height !== undefined && /\bbox|kasten/i.test(String(test?.[0]))),
  );
  if (new Set(onto.map(({ stack, height }) => (stack ?? height)![1])).size !== 1) return false;
  const [jump] = onto;
  if (onto.length === 1 && jump!.cleared?.[0] !== false) jump!.cleared = cleared;
  return true;
}

/** A second row of headings that numbers the tries: 1, 2, 3 and nothing else. */
function numbersOfTries(line: readonly unknown[], tests: ReadonlyMap<number, TestColumn>): boolean {
  const filled = [...line.entries()].filter(([, cell]) => !isBlank(cell));
  return (
    filled.length > 1 &&
    filled.every(([index, cell]) => Number(cell) - 1 === tests.get(index)?.attempt)
  );
}
