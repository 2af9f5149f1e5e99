import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import { dayColumn, newDayAside } from "../../column/day-column";
import { textColumn } from "../../column/text-column";
import { plainWords } from "../../header/header-words";
import { sampleColumn, valueFit } from "../../header/value-fit";
import { IssueLog } from "../../issue-log";
import { beginsSummary, isBlankLine } from "../../table/read-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import { type Unit, unitOf } from "../../value/units";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { massInWords } from "../mass-in-words";
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

/** A column of a test or a lift, and what its heading says of the figures. */
type TestColumn = Try & {
  readonly index: number;
  readonly heading: string;
  readonly part: JumpPart;
  readonly unit: Unit | null;
};

/** Meanings that hold for all tests and lifts of a row. */
const ofWholeRow = new Set(
  "day minute athlete kind tool gym by drop landing note bar speedIs movedWell reserve".split(" "),
);

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
  { tab, massUnit }: Pick<LayoutContext, "tab" | "massUnit">,
): Unfolded | null {
  const { cells, fields, repColumns, headerRow } = view;
  const ofLifts = table === "Sets";
  const above = ofLifts ? [] : testsAbove(view);
  // Of a header over two rows, and of units below it, each column's words together.
  const headingOf = (index: number) =>
    [above[index] ?? "", ...cells.slice(headerRow, view.first).map((line) => line[index])]
      .join(" ")
      .trim();
  // "Contact ms" may be a test of its own where no test is named, and "Squat, kg x sets x reps" a lift.
  const own = ofLifts ? ["scheme"] : ["contact", "flight", "height", "stack"];
  const taken = new Set(Object.values(fields).map(({ index }) => index));
  const under = [...above.keys()].filter(
    (index) => above[index] !== undefined && !taken.has(index),
  );
  const ofRow = fields.test === undefined || ofLifts ? [] : numberedTries(view);
  const named = [
    ...new Set([...unknown, ...under, ...own.flatMap((field) => fields[field]?.index ?? [])]),
  ]
    .sort((one, other) => one - other)
    .flatMap((index): TestColumn[] => {
      const heading = headingOf(index);
      const jump = isJumpColumn(heading) && !isRatio(heading) ? testName(heading) : null;
      const test = ofLifts ? liftInWords(heading) : jump;
      if (test === null) return [];
      const unit = ofLifts
        ? (massInWords(plainWords(heading)) ?? massUnit)
        : (unitIn(heading) ?? unitIn(above[index] ?? ""));
      const column = { index, heading, test, part: partOf(heading) ?? "height", unit, attempt: 0 };
      return ofLifts ? [column] : underOneHeading(view, column);
    });
  // "Jump height" beside one test's contact times is that test's.
  const [ofContact, ...otherContacts] = new Set(
    named.flatMap(({ part, test }) => (part === "contact" ? [test] : [])),
  );
  if (ofContact !== undefined && otherContacts.length === 0)
    for (const [at, column] of named.entries())
      if (/^jump$/i.test(column.test)) named[at] = { ...column, test: ofContact };
  const tries = triesOf(named.map(({ test }) => test));
  const tried = new Set([...tries.values()].map(({ test }) => plainWords(test)));
  const sums = named.filter(({ test }) => tried.has(plainWords(withoutSum(test))));
  const columns =
    ofRow.length > 0
      ? ofRow
      : named
          .filter((column) => !sums.includes(column) || tries.has(column.test))
          .map((column) => ({ ...column, ...tries.get(column.test) }));
  if (columns.length === 0) return null;
  // The best or the mean of the tries says nothing that they do not, nor does a ratio of figures beside it.
  const isDerived = (index: number) => {
    const words = plainWords(headingOf(index));
    if (isRatio(words)) return true;
    return columns.some(({ attempt }) => attempt > 0) && withoutSum(words) !== words;
  };
  const into = new Unfolded(table, cells, headerRow);
  for (let row = 0; row < view.first; row++) into.mark(row, "heading");
  // Sets and jumps of one tab are each read by themselves.
  into.passesOver = (column) =>
    !tests.has(column) &&
    !(isDerived(column) && !ofLifts) &&
    !isJumpColumn(headingOf(column)) &&
    liftInWords(headingOf(column)) === null;
  const quiet = { ...view, log: new IssueLog(table) };
  const aside = newDayAside();
  const readDay = dayColumn(quiet, fields.day, false, aside);
  const readName = textColumn(quiet, fields.athlete);
  const readTest = textColumn(quiet, fields.test);
  for (const [field, column] of Object.entries(fields))
    if (ofWholeRow.has(field)) into.describe(field, column);
  const tests = new Map<number, TestColumn>();
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
      else if (field === "test" && ofRow.length > 0) shared.test = [readTest(line, row), index];
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
      if (!ofLifts) jumpColumn(into, row, line, column, shared, groups, who);
      else if (setColumn(into, row, line, column, shared, tab, who)) lifted = true;
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

/** Jump tests named in the row above the header, carried right as under merged cells. */
function testsAbove({ cells, headerRow }: TableView): readonly (string | undefined)[] {
  const line = cells[headerRow - 1] ?? [];
  const first = line.findIndex((cell) => typeof cell === "string" && isJumpColumn(cell));
  if (
    first < 0 ||
    line.some((cell, at) => at > first && !isBlank(cell) && typeof cell !== "string")
  )
    return [];
  let carried: string | undefined;
  return Array.from(cells[headerRow]!, (_, at) => {
    if (at >= first && !isBlank(line[at])) carried = String(line[at]).trim();
    return carried;
  });
}

/** "Try 1", "Attempt 2", "3" beside a column of tests: the tries of the row's own test. */
function numberedTries({ cells, headerRow, fields }: TableView): TestColumn[] {
  // Among exercises a set may be one of lifts.
  const ofTests = fields.test?.words !== "exercise";
  const columns = cells[headerRow]!.flatMap((cell, index): TestColumn[] => {
    const heading = String(cell ?? "").trim();
    const words = plainWords(heading);
    const number = numberOfTry.exec(ofTests ? words.replace(/^set /, "") : words)?.[1];
    if (number === undefined) return [];
    return [
      {
        index,
        heading,
        test: "",
        part: "height",
        unit: unitIn(heading),
        attempt: Number(number) - 1,
      },
    ];
  });
  return columns.length > 1 && columns.every(({ attempt }, at) => attempt === at) ? columns : [];
}

const numberOfTry =
  /^(?:(?:try|attempt|trial|jump|versuch|sprung|intento|essai|proba)\.? ?)?#?([1-9])(?: ?\(?(?:cm|m|in)\)?)?$/;

/** Height by contact time: told by the two figures themselves. */
const isRatio = (heading: string) => /\brsi\b|\breactive strength\b/.test(plainWords(heading));

/** A name without "best", "max" or "mean" at its end. */
function withoutSum(name: string): string {
  return name.replace(
    /[\s.:–-]*\b(?:best|max|mean|avg|average|min|bestwert|mittel|mittelwert)\b.*$/i,
    "",
  );
}

/** True where a row's tries stand in numbered columns beside its test. */
export function hasNumberedTries(view: TableView): boolean {
  return numberedTries(view).length > 0;
}

/** A column, and tries under its heading that is merged over them: heights in columns without a heading. */
function underOneHeading(
  { cells, headerRow, first, end }: TableView,
  column: TestColumn,
): TestColumn[] {
  const found = [column];
  if (partOf(column.heading) !== null) return found;
  for (let index = column.index + 1; isBlank(cells[headerRow]![index]); index++) {
    const sample = sampleColumn(cells, first, end, index).filter((cell) => !isTryNumber(cell));
    if (sample.length === 0 || valueFit("height", sample) < 1) break;
    found.push({ ...column, index, attempt: index - column.index });
  }
  return found;
}

const isTryNumber = (cell: unknown) => Number(cell) < 10;

/** A second row of headings that numbers the tries: 1, 2, 3 and nothing else. */
function numbersOfTries(line: readonly unknown[], tests: ReadonlyMap<number, TestColumn>): boolean {
  const filled = [...line.entries()].filter(([, cell]) => !isBlank(cell));
  return (
    filled.length > 1 &&
    filled.every(([index, cell]) => Number(cell) - 1 === tests.get(index)?.attempt)
  );
}

function unitIn(heading: string): Unit | null {
  const last = /\b(ms|s|cm|mm|m|in)\b\)?$/.exec(plainWords(heading))?.[1];
  return jumpTitle(heading).parts[0]?.unit ?? unitOf(last);
}

function setColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  { index, heading, test, unit }: TestColumn,
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
      shared: { ...rest, exercise: [test, index] as Placed },
      note: withWords(note, said.note, index),
      unit,
    };
    emitSets(into, place, said.groups, said.speeds, tab.speeds ?? null);
  }
  return said.is === "sets";
}

function jumpColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  { index, test, part, unit, attempt: tryAt }: TestColumn,
  shared: Readonly<Record<string, Placed | undefined>>,
  groups: Map<string, Record<string, Placed | undefined>>,
  { athlete, day }: Who,
): void {
  const said = jumpCell(line[index], [part]);
  const { dropCm } = jumpTitle(test);
  const ofHeading: Record<string, Placed> = {
    ...(test !== "" && { test: [test, index] as Placed }),
    ...(dropCm !== null && isBlank(shared.drop?.[0]) && { drop: [dropCm, index] as Placed }),
  };
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
    let at = tryAt + first;
    const taken = (figure: string) => groups.get(`${test}|${at}`)?.[figure] !== undefined;
    while (Object.keys(attempt).some(taken)) at++;
    const key = `${test}|${at}`;
    const flat = groups.get(key) ?? { ...shared, ...ofHeading };
    groups.set(key, flat);
    // Each column has its own unit: inches here, centimetres in the next; plates have none.
    for (const [figure, value] of Object.entries(attempt))
      flat[figure] = [figure === "stack" ? value : withUnit(value, unit), index];
  });
}
