import { plainWords } from "../../header/header-words";
import { sampleColumn, valueFit } from "../../header/value-fit";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import type { Unit } from "../../value/units";
import { headingParts } from "../across/heading-parts";
import { notLifted } from "../across/names-over-figures";
import { labelsSet } from "../labels-sets";
import { liftInWords } from "../lift-in-words";
import { massInWords } from "../mass-in-words";
import { numberedTries } from "./numbered-tries";
import type { TestColumn } from "./test-column";
import { isJumpColumn, partOf, testName, triesOf } from "./test-heading";
import { unitInHeading } from "./unit-in-heading";

/** The columns of tests or lifts, and what the other headings beside them are. */
export type TestColumns = {
  readonly columns: readonly TestColumn[];
  /** All words above a column. */
  readonly headingOf: (index: number) => string;
  /** The lift of which a column holds the loads; null where it holds anything else. */
  readonly liftOf: (index: number) => string | null;
  /** Whether each row names its own test, of which the columns hold the tries. */
  readonly testOfRow: boolean;
  /** A best, a mean or a ratio of what stands in the columns. */
  readonly isDerived: (index: number) => boolean;
};

/** The columns of a table that are each a test, or each a lift; `unknown` have no meaning of their own. */
export function findTestColumns(
  view: TableView,
  ofLifts: boolean,
  unknown: readonly number[],
  massUnit: Unit | null,
): TestColumns {
  const { cells, fields, headerRow } = view;
  // "Contact ms" may be a test of its own where no test is named, and "Squat, kg x sets x reps" a lift.
  const own = ofLifts ? ["scheme"] : ["contact", "flight", "height", "stack"];
  // Beside contact times a height is what was jumped.
  const { contact, height } = ofLifts ? {} : fields;
  const isJumped = (index: number) => contact !== undefined && index === height?.index;
  const places = [
    ...new Set([...unknown, ...own.flatMap((field) => fields[field]?.index ?? [])]),
  ].sort((one, other) => one - other);
  const above = ofLifts ? [] : testsAbove(view, places[0] ?? 0);
  // Of a header over two rows, and of units below it, each column's words together.
  const headingOf = (index: number) =>
    [above[index] ?? "", ...cells.slice(headerRow, view.first).map((line) => line[index])]
      .join(" ")
      .trim();
  // "Squat target", "Squat reps" and "Squat RPE" stand over what was not lifted, "Squat" beside "kg" over sets' numbers.
  const liftOf = (index: number) => {
    const heading = headingOf(index);
    const { field } = headingParts(heading, index);
    if (notLifted(heading) || !/^(?:load|scheme)$/.test(field ?? "load")) return null;
    const said = sampleColumn(cells, view.first, view.end, index);
    return said.every(labelsSet) ? null : liftInWords(heading);
  };
  const ofRow = fields.test === undefined || ofLifts ? [] : numberedTries(view);
  const lifts = ofLifts ? places.map(liftOf) : [];
  const taken = new Set<number>();
  const named = places.flatMap((index, at): TestColumn[] => {
    // A try under a heading merged over it was taken with the first.
    if (taken.has(index)) return [];
    const heading = headingOf(index);
    const isJump = isJumpColumn(heading) || isJumped(index);
    const jump = isJump && !isRatio(heading) ? testName(heading) : null;
    const test = ofLifts ? liftNamed(lifts, at, headingParts(heading, index).label) : jump;
    if (test === null) return [];
    const unit = ofLifts
      ? (massInWords(plainWords(heading)) ?? massUnit)
      : (unitInHeading(heading) ?? unitInHeading(above[index] ?? ""));
    const column = { index, heading, test, part: partOf(heading) ?? "height", unit, attempt: 0 };
    const tries = ofLifts
      ? [column]
      : underOneHeading(view, column, (other) => above[other] === above[index]);
    for (const one of tries) taken.add(one.index);
    return tries;
  });
  // "Jump height" beside one test's contact times is that test's.
  const [ofContact, ...otherContacts] = new Set(
    named.flatMap(({ part, test }) => (part === "contact" ? [test] : [])),
  );
  if (ofContact !== undefined && otherContacts.length === 0)
    for (const [at, column] of named.entries())
      if (/^jump$/i.test(column.test)) named[at] = { ...column, test: ofContact };
  const tries = triesOf(named.map(({ test }) => test));
  const merged = new Set(named.flatMap(({ test, attempt }) => (attempt > 0 ? [test] : [])));
  const tried = new Set(
    [...[...tries.values()].map(({ test }) => test), ...merged].map((test) => plainWords(test)),
  );
  const sums = named.filter(({ test }) => tried.has(plainWords(withoutSum(test))));
  const columns =
    ofRow.length > 0
      ? ofRow
      : named
          .filter((one) => !sums.includes(one) || tries.has(one.test) || merged.has(one.test))
          .map((column) => ({ ...column, ...tries.get(column.test) }));
  // The best or the mean of the tries says nothing that they do not, nor does a ratio of figures beside it.
  const isDerived = (index: number) => {
    const words = plainWords(headingOf(index));
    if (isRatio(words)) return true;
    return columns.some(({ attempt }) => attempt > 0) && withoutSum(words) !== words;
  };
  return { columns, headingOf, liftOf, testOfRow: ofRow.length > 0, isDerived };
}

/** A lift as the coach writes it where the same stands in another column: "Pause squat" beside "Squat". */
function liftNamed(lifts: readonly (string | null)[], at: number, label: string): string | null {
  const lift = lifts[at]!;
  const again = lift !== null && lifts.indexOf(lift) !== lifts.lastIndexOf(lift);
  return again && plainWords(label).endsWith(lift) ? label : lift;
}

/**
 * Jump tests named in the row above the header, carried right as under merged cells. A title, which begins
 * left of the tests, names none where a column does so itself.
 */
function testsAbove(
  { cells, headerRow }: TableView,
  firstPlace: number,
): readonly (string | undefined)[] {
  const line = cells[headerRow - 1] ?? [];
  const first = line.findIndex((cell) => typeof cell === "string" && isJumpColumn(cell));
  if (
    first < 0 ||
    line.some((cell, at) => at > first && !isBlank(cell) && typeof cell !== "string")
  )
    return [];
  let carried: string | undefined;
  return Array.from(cells[headerRow]!, (own, at) => {
    if (at >= first && !isBlank(line[at])) carried = String(line[at]).trim();
    return first < firstPlace && isJumpColumn(String(own)) ? undefined : carried;
  });
}

/** Height by contact time: told by the two figures themselves. */
const isRatio = (heading: string) => /\brsi\b|\breactive strength\b/.test(plainWords(heading));

/** A name without "best", "max" or "mean" at its end, or before it. */
function withoutSum(name: string): string {
  return name.replace(
    /^(?:best|max|mean|avg|average)\s(?:of )?|[\s.:–-]*\b(?:best|max|mean|avg|average|min|bestwert|mittel|mittelwert)\b.*$/i,
    "",
  );
}

/** A column, and tries under its heading that is merged over them: heights in columns without a heading. */
function underOneHeading(
  { cells, headerRow, first, end }: TableView,
  column: TestColumn,
  isUnderIt: (index: number) => boolean,
): TestColumn[] {
  const found = [column];
  if (partOf(column.heading) !== null) return found;
  const mayBe = (index: number) => isBlank(cells[headerRow]![index]) && isUnderIt(index);
  for (let index = column.index + 1; mayBe(index); index++) {
    const sample = sampleColumn(cells, first, end, index).filter((cell) => !isTryNumber(cell));
    if (sample.length === 0 || valueFit("height", sample) < 1) break;
    found.push({ ...column, index, attempt: index - column.index });
  }
  return found;
}

const isTryNumber = (cell: unknown) => Number(cell) < 10;
