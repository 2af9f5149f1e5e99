import type { Cells } from "../../rows/cells";
import {
  headingIn,
  lineTwiceWords,
  nextWeekHeadings,
  notOurTabWords,
  tabGoneWords,
} from "../../words/next-week-tab";
import type { NumberStyle } from "../../words/printed-numbers";
import { ownTabNames } from "../../words/tabs";
import type { Tab, Workbook } from "../workbook";
import { standingText } from "./cell-text";
import { typedColumn, type WeekColumn, weekColumns } from "./plan-lines";
import { writtenKept } from "./written-before";

/** The `Next week` tab as it stands. */
export type WeekTab = {
  readonly tab: Tab;
  /** Unit of the masses, as its headings say. */
  readonly unit: NumberStyle["unit"];
  /** Column of each heading, from 1. */
  readonly columnOf: Readonly<Record<WeekColumn, number>>;
  /** Columns a newer version brings, not in the tab yet: where they will stand is in `columnOf`. */
  readonly coming: readonly WeekColumn[];
  /** Row of the headings, from 1. */
  readonly headingAt: number;
  /** Row of each line, from 1, by its name. */
  readonly rowOf: ReadonlyMap<string, number>;
  /** First row with nothing in it nor below it. */
  readonly freeRow: number;
  readonly text: (row: number, column: number) => string;
  /** Columns with something in a row. */
  readonly filled: (row: number) => readonly number[];
};

/** Says why a tab that bears our name cannot be read as ours. */
export class UnreadWeekTab extends Error {}

const massColumns = ["marker", "load", "plates"] as const;

/** The tab that bears our name; null when there is none. */
export function findWeekTab(workbook: Workbook): Tab | null {
  return workbook.tabs().find(({ name }) => name === ownTabNames.nextWeek) ?? null;
}

/** The tab that bears our name, where it was there a moment ago. Throws a sentence when it has gone. */
export function presentWeekTab(workbook: Workbook): Tab {
  const tab = findWeekTab(workbook);
  if (!tab) throw new Error(tabGoneWords(ownTabNames.nextWeek));
  return tab;
}

/**
 * Reads the tab. Throws `UnreadWeekTab` with a sentence when a heading is gone or a line stands twice. A heading that was
 * never written here is not gone: it came with a newer version, and its column is still to be made.
 *
 * @param values of the tab where they were read already
 */
export function readWeekTab(
  workbook: Workbook,
  tab: Tab,
  values: Cells = workbook.values(tab.id),
): WeekTab {
  const formulas = workbook.formulas(tab.id);
  const text = (row: number, column: number) =>
    standingText(values[row - 1]?.[column - 1], formulas[row - 1]?.[column - 1] ?? "");
  const filled = (row: number) =>
    (values[row - 1] ?? []).flatMap((_, i) => (text(row, i + 1) === "" ? [] : [i + 1]));
  const { headingAt, unit, columnOf, absent } = headingsIn(values);
  const coming = headingAt === 0 ? [] : notYetWritten(workbook, absent);
  const missing = absent.filter((column) => !coming.includes(column));
  if (missing.length > 0) {
    const gone = missing.map((column) => headingIn(column, unit));
    throw new UnreadWeekTab(notOurTabWords(tab.name, gone));
  }
  const rowOf = new Map<string, number>();
  let lastRow = headingAt;
  let lastColumn = Math.max(...Object.values(columnOf), ...filled(headingAt));
  for (let row = headingAt + 1; row <= values.length; row++) {
    const columns = filled(row);
    if (columns.length === 0) continue;
    lastRow = row;
    lastColumn = Math.max(lastColumn, columns[columns.length - 1]!);
    const name = text(row, columnOf.line);
    if (name === "") continue;
    const other = rowOf.get(name);
    if (other !== undefined) throw new UnreadWeekTab(lineTwiceWords(tab.name, name, [other, row]));
    rowOf.set(name, row);
  }
  // What is still to be made goes to the right of everything.
  const places = coming.map((column, at) => [column, lastColumn + 1 + at]);
  return {
    tab,
    unit,
    columnOf: { ...columnOf, ...Object.fromEntries(places) },
    coming,
    headingAt,
    rowOf,
    freeRow: lastRow + 1,
    text,
    filled,
  };
}

/** The row of our headings, from 1, and the column of each; 0 for what is not there. */
function headingsIn(values: Cells) {
  const at = values.findIndex(
    (row) => row.includes(nextWeekHeadings.athlete) && row.includes(nextWeekHeadings.line),
  );
  const headings = values[at] ?? [];
  const inPounds = massColumns.some((column) => headings.includes(headingIn(column, "lb")));
  const unit: NumberStyle["unit"] = inPounds ? "lb" : "kg";
  const columnOf = Object.fromEntries(
    weekColumns.map((column) => [column, headings.indexOf(headingIn(column, unit)) + 1]),
  ) as Record<WeekColumn, number>;
  const absent = weekColumns.filter((column) => columnOf[column] === 0);
  return { headingAt: at + 1, unit, columnOf, absent };
}

/** Columns that no line written here had yet: they came with a newer version. */
function notYetWritten(workbook: Workbook, columns: readonly WeekColumn[]): readonly WeekColumn[] {
  const lines = Object.values(writtenKept.read(workbook).value);
  const known = new Set(lines.flatMap((line) => Object.keys(line)));
  if (known.size === 0) return [];
  return columns.filter((column) => column !== typedColumn && !known.has(column));
}
