import type { Day } from "../../../coaching/calendar/day";
import { dayColumn } from "../../column/day-column";
import { plainWords } from "../../header/header-words";
import { sampleColumn, valueFit } from "../../header/value-fit";
import { IssueLog } from "../../issue-log";
import { beginsSummary } from "../../table/read-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import { type Unit, unitOf } from "../../value/units";
import { liftInWords } from "../lift-in-words";
import { emitSets } from "../shorthand/emit-sets";
import { orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import type { TabAnswers } from "../tab-answers";
import { type Placed, Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import { withWords } from "../with-words";
import { jumpCell } from "./jump-cell";
import { type JumpPart, jumpTitle } from "./jump-title";
import { isJumpColumn, partOf, type Try, testName, triesOf } from "./test-heading";

type TestColumn = {
  readonly index: number;
  readonly heading: string;
  readonly part: JumpPart | null;
  /** Columns to the left that the same heading stands over, as merged cells do. */
  readonly further: number;
};

/** Meanings that hold for all tests and lifts of a row. */
const ofWholeRow = new Set(
  "day minute athlete kind tool gym by drop landing note bar speedIs movedWell reserve".split(" "),
);

/** What a column of a test stands for. */
type MeantTest = Try & { readonly part: JumpPart; readonly unit: Unit | null };

/** Whose row it is, of which day; null where that cannot be read. */
type Who = { readonly athlete: string; readonly day: Day | null };

/**
 * One row an athlete and day, one column a test or a lift ("Box jump (cm)", "Drop jump contact ms",
 * "Squat" with shorthand cells). `unknown` are the columns without a meaning of their own. Null when
 * none of them is a test or lift.
 */
export function unfoldWideTests(
  view: TableView,
  table: "Sets" | "Jumps",
  unknown: readonly number[],
  tab: TabAnswers,
): Unfolded | null {
  const { cells, fields, repColumns, headerRow } = view;
  const head = cells[headerRow]!;
  const columns: TestColumn[] = [];
  // "Contact ms" may be a test of its own where no test is named, and "Squat, kg x sets x reps" a lift.
  const own = table === "Jumps" ? ["contact", "flight", "height", "stack"] : ["scheme"];
  for (const index of [...unknown, ...own.flatMap((field) => fields[field]?.index ?? [])]) {
    const heading = String(head[index]).trim();
    const isTest = table === "Jumps" ? isJumpColumn(heading) : liftInWords(heading) !== null;
    if (isTest) columns.push({ index, heading, part: partOf(heading), further: 0 });
  }
  if (columns.length === 0) return null;
  if (table === "Jumps")
    columns.push(...columns.flatMap((column) => underOneHeading(view, column)));
  const at = new Set(columns.map(({ index }) => index));
  const into = new Unfolded(table, cells, headerRow);
  for (let row = 0; row < view.first; row++) into.mark(row, "heading");
  // Sets and jumps of one tab are each read by themselves.
  into.passesOver = (column) =>
    !at.has(column) && !isJumpColumn(String(head[column])) && liftInWords(head[column]) === null;
  columns.sort((one, other) => one.index - other.index);
  const quiet = { ...view, log: new IssueLog(table) };
  const readDay = dayColumn(quiet, fields.day, false);
  const tests = new Map<number, MeantTest>();
  const tries = triesOf(columns.map(({ heading }) => testName(heading)));
  for (const { index, heading, part, further } of columns) {
    const title = jumpTitle(heading);
    const unit =
      title.parts[0]?.unit ?? unitOf(/\b(ms|s|cm|mm|m|in)\b\)?$/.exec(plainWords(heading))?.[1]);
    const meant = part ?? "height";
    // Of several columns of heights none speaks for the others.
    const shared = [...tests.values()].some((other) => other.part === meant);
    into.describe(meant, { heading: shared ? meant : heading, words: heading });
    const test = testName(heading);
    tests.set(index, { ...(tries.get(test) ?? { test, attempt: further }), part: meant, unit });
  }
  for (let row = view.first; row < view.end; row++) {
    const line = cells[row]!;
    if (beginsSummary(line, fields.athlete) || numbersOfTries(line, tests)) {
      into.mark(row, "heading");
      continue;
    }
    const shared: Record<string, Placed | undefined> = {};
    for (const [field, { index }] of [...Object.entries(fields), ...Object.entries(repColumns)]) {
      if (ofWholeRow.has(field)) shared[field] = [line[index], index];
      else if (!tests.has(index) && !isBlank(line[index]) && line[index] !== false)
        into.unread.see(headerRow, row, index);
    }
    const groups = new Map<string, Record<string, Placed | undefined>>();
    const who: Who = { athlete: String(shared.athlete![0] ?? ""), day: readDay(line, row) };
    let lifted = false;
    for (const { index, heading } of columns) {
      if (table === "Jumps")
        jumpColumn(into, row, line, index, tests.get(index)!, shared, groups, who);
      else if (setColumn(into, row, line, index, heading, shared, tab, who)) lifted = true;
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

/** Tries of one test under a heading that is merged over them: heights in columns without a heading. */
function underOneHeading(
  { cells, headerRow, first, end }: TableView,
  column: TestColumn,
): TestColumn[] {
  const found: TestColumn[] = [];
  if (column.part !== null) return found;
  for (let index = column.index + 1; isBlank(cells[headerRow]![index]); index++) {
    const sample = sampleColumn(cells, first, end, index).filter((cell) => !isTryNumber(cell));
    if (sample.length === 0 || valueFit("height", sample) < 1) break;
    found.push({ ...column, index, further: index - column.index });
  }
  return found;
}

const isTryNumber = (cell: unknown) => typeof cell === "number" && cell < 10;

/** A second row of headings that numbers the tries: 1, 2, 3 and nothing else. */
function numbersOfTries(line: readonly unknown[], tests: ReadonlyMap<number, MeantTest>): boolean {
  const filled = [...line.entries()].filter(([, cell]) => !isBlank(cell));
  return (
    filled.length > 1 &&
    filled.every(([index, cell]) => cell === (tests.get(index)?.attempt ?? Number.NaN) + 1)
  );
}

function setColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  index: number,
  heading: string,
  shared: Readonly<Record<string, Placed | undefined>>,
  tab: TabAnswers,
  { athlete, day }: Who,
): boolean {
  const said = setCell(line[index], schemeSense(orderFromWords(heading), tab.setsFirst));
  if (said.is === "none") into.note(row, index, athlete, day, "day", said.note);
  else if (said.is !== "sets")
    into.log.addAtSource(
      said.is === "order-unsettled" ? "scheme-order-unsettled" : "scheme-unread",
      row,
      index,
    );
  else {
    const { note, ...rest } = shared;
    const place = {
      row,
      schemeColumn: index,
      speedColumn: index,
      shared: { ...rest, exercise: [liftInWords(heading), index] as Placed },
      note: withWords(note, said.note, index),
    };
    emitSets(into, place, said.groups, said.speeds, tab.speeds ?? null);
  }
  return said.is === "sets";
}

function jumpColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  index: number,
  meant: MeantTest,
  shared: Readonly<Record<string, Placed | undefined>>,
  groups: Map<string, Record<string, Placed | undefined>>,
  { athlete, day }: Who,
): void {
  const said = jumpCell(line[index], [meant.part]);
  if (said.problem !== null)
    into.log.addAtSource(
      said.problem,
      row,
      index,
      said.problem === "unsure" ? { mend: String(line[index]).replace(/[?\s]/g, "") } : {},
    );
  into.note(row, index, athlete, day, "day", said.note);
  said.attempts.forEach((attempt, first) => {
    // The same figure once more is another jump.
    let at = meant.attempt + first;
    const taken = (part: string) => groups.get(`${meant.test}|${at}`)?.[part] !== undefined;
    while (Object.keys(attempt).some(taken)) at++;
    const key = `${meant.test}|${at}`;
    const flat = groups.get(key) ?? { ...shared, test: [meant.test, index] as Placed };
    groups.set(key, flat);
    // Each column has its own unit: inches here, centimetres in the next.
    if (attempt.height !== undefined) flat.height = [withUnit(attempt.height, meant.unit), index];
    if (attempt.stack !== undefined) flat.stack = [attempt.stack, index];
    if (attempt.cleared !== undefined) flat.cleared = [attempt.cleared, index];
    if (attempt.contact !== undefined)
      flat.contact = [withUnit(attempt.contact, meant.unit), index];
    if (attempt.flight !== undefined) flat.flight = [withUnit(attempt.flight, meant.unit), index];
  });
}
