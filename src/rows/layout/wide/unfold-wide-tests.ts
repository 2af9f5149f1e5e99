import { isoFromDay } from "../../../coaching/calendar/day";
import { dayColumn, newDayAside } from "../../column/day-column";
import { textColumn } from "../../column/text-column";
import { IssueLog } from "../../issue-log";
import { beginsSummary, isBlankLine } from "../../table/read-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { type Placed, Unfolded } from "../unfolded";
import { findTestColumns } from "./find-test-columns";
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
  view: TableView,
  table: "Sets" | "Jumps",
  unknown: readonly number[],
  { tab, massUnit }: Pick<LayoutContext, "tab" | "massUnit">,
): Unfolded | null {
  const { cells, fields, repColumns, headerRow } = view;
  const ofLifts = table === "Sets";
  const { columns, headingOf, liftOf, testOfRow, isDerived } = findTestColumns(
    view,
    ofLifts,
    unknown,
    massUnit,
  );
  if (columns.length === 0) return null;
  const into = new Unfolded(table, cells, headerRow);
  for (let row = 0; row < view.first; row++) into.mark(row, "heading");
  // Sets and jumps of one tab are each read by themselves.
  into.passesOver = (column) =>
    !tests.has(column) &&
    !(isDerived(column) && !ofLifts) &&
    !isJumpColumn(headingOf(column)) &&
    (ofLifts ? liftOf(column) : liftInWords(headingOf(column))) === null;
  const quiet = { ...view, log: new IssueLog(table) };
  const aside = newDayAside();
  const readDay = dayColumn(quiet, fields.day, false, aside);
  const readName = textColumn(quiet, fields.athlete);
  const readTest = textColumn(quiet, fields.test);
  for (const [field, column] of Object.entries(fields))
    if (ofWholeRow.has(field)) into.describe(field, column);
  const tests = new Map<number, TestColumn>();
  const { cleared } = fields;
  if (cleared && !ofLifts) into.describe("cleared", cleared);
  // Boxes to tick of which none is ticked say nothing.
  const isTicked =
    cleared !== undefined &&
    cells.slice(view.first, view.end).some((line) => line[cleared.index] === true);
  const isSaid = (cell: unknown) => !isBlank(cell) && (cell !== false || isTicked);
  for (const column of columns) {
    const { index, heading, part } = column;
    // Of several columns of heights none speaks for the others.
    const shared = [...tests.values()].some((other) => other.part === part);
    into.describe(part, { heading: shared ? part : heading, words: heading });
    tests.set(index, column);
  }
  for (let row = view.first; row < view.end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    if (beginsSummary(line, fields.athlete) || numbersOfTries(line, tests)) {
      into.mark(row, "heading");
      continue;
    }
    const shared: Record<string, Placed | undefined> = {};
    for (const [field, { index }] of [...Object.entries(fields), ...Object.entries(repColumns)]) {
      if (ofWholeRow.has(field)) shared[field] = [line[index], index];
      else if (field === "test" && testOfRow) shared.test = [readTest(line, row), index];
      else if (field === "cleared" && !ofLifts) continue;
      else if (tests.has(index) || (isDerived(index) && !ofLifts)) continue;
      else if (!isBlank(line[index]) && line[index] !== false)
        into.unread.see(headerRow, row, index);
    }
    const groups = new Map<string, Record<string, Placed | undefined>>();
    const who: Who = { athlete: readName(line, row), day: readDay(line, row) };
    // Under merged cells, and in the order that the whole column or the coach settles.
    if (who.athlete !== "") shared.athlete = [who.athlete, fields.athlete!.index];
    if (who.day !== null) shared.day = [isoFromDay(who.day), fields.day!.index];
    if (aside.minute !== null && isBlank(shared.minute?.[0]))
      shared.minute = [aside.minute / 1440, fields.day!.index];
    let lifted = false;
    for (const column of columns) {
      if (!ofLifts) jumpsInColumn(into, row, line, column, shared, groups, who);
      else if (setInColumn(into, row, line, column, shared, tab, who)) lifted = true;
    }
    if (cleared !== undefined && !ofLifts && isSaid(line[cleared.index])) {
      const placed: Placed = [line[cleared.index], cleared.index];
      if (!takeCleared([...groups.values()], placed))
        into.unread.see(headerRow, row, cleared.index);
    }
    for (const flat of groups.values()) into.emit(row, flat);
    if (lifted || groups.size > 0) continue;
    const { note } = shared;
    if (note !== undefined && !isBlank(note[0]))
      into.note(row, note[1], who.athlete, who.day, "day", String(note[0]).trim());
    // The reader of rows says what is wrong with a day or a name.
    if (who.day === null || who.athlete === "") into.emit(row, shared);
  }
  return into;
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
