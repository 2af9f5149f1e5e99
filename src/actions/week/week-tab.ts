import type { Cells } from "../../rows/cells";
import { columnName } from "../../rows/value/cell-address";
import { cautions } from "../../words/cautions";
import {
  headingIn,
  lineTwiceWords,
  nextWeekHeadings,
  notOurTabWords,
  tabGoneWords,
  weekTitleWords,
} from "../../words/next-week-tab";
import type { NumberStyle } from "../../words/printed-numbers";
import { ownTabNames } from "../../words/tabs";
import type { Tab, Workbook, Written } from "../workbook";
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

const headingRow = 4;
const massColumns = ["marker", "load", "plates"] as const;
/**
 * Pixels. The first four fit a phone's width of 375 together, beside the row numbers: whose, which
 * marker, what was typed, the answer.
 */
const widths: Readonly<Record<WeekColumn, number>> = {
  athlete: 92,
  marker: 58,
  typed: 87,
  today: 92,
  day: 92,
  sets: 60,
  load: 60,
  plates: 120,
  floor: 72,
  stack: 84,
  contacts: 76,
  assistance: 380,
  why: 380,
  line: 240,
};
/** Ground of the one column a coach types into; dark text on it keeps a contrast above 15:1. */
const typedGround = "#fff7d6";
/** Looks of a tab: a tab made before these is given the ground of its typed column once. */
const looks = { key: "next week looks", version: "1" } as const;

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
 * Makes the tab when it is missing, heads it when it is empty, and gives a tab of an older version
 * the columns and looks it has not got; running it again changes nothing.
 */
export function ensureWeekTab(workbook: Workbook, monday: string, unit: NumberStyle["unit"]): Tab {
  const tab = findWeekTab(workbook) ?? workbook.addTab(ownTabNames.nextWeek);
  const isEmpty = workbook.values(tab.id).every((row) => row.every((cell) => cell === ""));
  if (!isEmpty) return bringUpToDate(workbook, tab);
  const blank = weekColumns.map(() => "");
  const line = (text: string): Written[] => [text, ...blank.slice(1)];
  workbook.dress(
    tab.id,
    headingRow,
    weekColumns.map((column) => widths[column]),
  );
  workbook.paint(tab.id, weekColumns.indexOf(typedColumn) + 1, headingRow, typedGround);
  const under = (column: WeekColumn) => {
    const letter = columnName(weekColumns.indexOf(column) + 1);
    return `${letter}${headingRow + 1}:${letter}`;
  };
  workbook.format(tab.id, under("day"), "ddd d mmm");
  workbook.alignLeft(tab.id, under("day"));
  // A speed with its unit cannot run into the stack beside it.
  workbook.format(tab.id, under("floor"), '0.00" m/s"');
  workbook.remember({ [looks.key]: looks.version });
  workbook.write(tab.id, {
    row: 1,
    column: 1,
    values: [
      line(weekTitleWords([monday])),
      ...cautions.map(line),
      weekColumns.map((column) => headingIn(column, unit)),
    ],
  });
  return tab;
}

/** The columns a newer version brings go to the right of everything; no cell of the coach's is touched. */
function bringUpToDate(workbook: Workbook, tab: Tab): Tab {
  const { columnOf, coming, headingAt, unit } = readWeekTab(workbook, tab);
  const [first] = coming;
  if (first !== undefined) {
    workbook.dress(
      tab.id,
      headingAt,
      coming.map((column) => widths[column]),
      columnOf[first],
    );
    workbook.write(tab.id, {
      row: headingAt,
      column: columnOf[first],
      values: [coming.map((column) => headingIn(column, unit))],
    });
  }
  if (workbook.recall(looks.key) !== looks.version) {
    const at = columnOf[typedColumn];
    if (workbook.isPlain(tab.id, at, headingAt)) {
      workbook.paint(tab.id, at, headingAt, typedGround);
    }
    workbook.remember({ [looks.key]: looks.version });
  }
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
  const isHeading = (row: readonly unknown[]) =>
    row.includes(nextWeekHeadings.athlete) && row.includes(nextWeekHeadings.line);
  const heading = values.findIndex(isHeading);
  const headings = values[heading] ?? [];
  const inPounds = massColumns.some((column) => headings.includes(headingIn(column, "lb")));
  const unit = inPounds ? "lb" : "kg";
  const columnOf = Object.fromEntries(
    weekColumns.map((column) => [column, headings.indexOf(headingIn(column, unit)) + 1]),
  ) as Record<WeekColumn, number>;
  const known = new Set(
    Object.values(writtenKept.read(workbook).value).flatMap((line) => Object.keys(line)),
  );
  const absent = weekColumns.filter((column) => columnOf[column] === 0);
  const coming = absent.filter(
    (column) => heading >= 0 && known.size > 0 && column !== typedColumn && !known.has(column),
  );
  const missing = absent.filter((column) => !coming.includes(column));
  if (missing.length > 0)
    throw new UnreadWeekTab(
      notOurTabWords(
        tab.name,
        missing.map((column) => headingIn(column, unit)),
      ),
    );
  const filled = (row: number) =>
    (values[row - 1] ?? []).flatMap((_, i) => (text(row, i + 1) === "" ? [] : [i + 1]));
  const rowOf = new Map<string, number>();
  let lastRow = heading + 1;
  for (let row = heading + 2; row <= values.length; row++) {
    if (filled(row).length > 0) lastRow = row;
    const name = text(row, columnOf.line);
    if (name === "") continue;
    const other = rowOf.get(name);
    if (other !== undefined) throw new UnreadWeekTab(lineTwiceWords(tab.name, name, [other, row]));
    rowOf.set(name, row);
  }
  const width = Math.max(...values.map((row) => row.length));
  let lastColumn = Math.max(...Object.values(columnOf));
  for (let row = heading + 1; row <= values.length; row++) {
    for (let column = lastColumn + 1; column <= width; column++) {
      if (text(row, column) !== "") lastColumn = column;
    }
  }
  coming.forEach((column, at) => {
    columnOf[column] = lastColumn + 1 + at;
  });
  const headingAt = heading + 1;
  return { tab, unit, columnOf, coming, headingAt, rowOf, freeRow: lastRow + 1, text, filled };
}
