import type { Cells } from "../../rows/cells";
import { cautions } from "../../words/cautions";
import {
  lineTwiceWords,
  nextWeekHeadings,
  notOurTabWords,
  weekTitleWords,
} from "../../words/next-week-tab";
import { ownTabNames } from "../../words/tabs";
import type { Tab, Workbook, Written } from "../workbook";
import { standingText } from "./cell-text";
import { typedColumn, type WeekColumn, weekColumns } from "./plan-lines";

/** The `Next week` tab as it stands. */
export type WeekTab = {
  readonly tab: Tab;
  /** Column of each heading, from 1. */
  readonly columnOf: Readonly<Record<WeekColumn, number>>;
  /** Row of each line, from 1, by its name. */
  readonly rowOf: ReadonlyMap<string, number>;
  /** First row with nothing in it nor below it. */
  readonly freeRow: number;
  readonly text: (row: number, column: number) => string;
  /** Columns with something in a row. */
  readonly filled: (row: number) => readonly number[];
};

const headingRow = 4;
const widths = [132, 64, 100, 340, 92, 60, 60, 150, 64, 100, 76, 380, 420, 240];
/** Ground of the one column a coach types into; dark text on it keeps a contrast above 15:1. */
const typedGround = "#fff7d6";

/** The tab that bears our name; null when there is none. */
export function findWeekTab(workbook: Workbook): Tab | null {
  return workbook.tabs().find(({ name }) => name === ownTabNames.nextWeek) ?? null;
}

/** Makes the tab when it is missing and heads it when it is empty; running it again changes nothing. */
export function ensureWeekTab(workbook: Workbook, monday: string): Tab {
  const tab = findWeekTab(workbook) ?? workbook.addTab(ownTabNames.nextWeek);
  const isEmpty = workbook.values(tab.id).every((row) => row.every((cell) => cell === ""));
  if (!isEmpty) return tab;
  const blank = weekColumns.map(() => "");
  const line = (text: string): Written[] => [text, ...blank.slice(1)];
  workbook.dress(tab.id, headingRow, widths);
  workbook.paint(tab.id, weekColumns.indexOf(typedColumn) + 1, headingRow, typedGround);
  workbook.write(tab.id, {
    row: 1,
    column: 1,
    values: [
      line(weekTitleWords([monday])),
      ...cautions.map(line),
      weekColumns.map((column) => nextWeekHeadings[column]),
    ],
  });
  return tab;
}

/** Reads the tab. Throws a sentence when a heading is gone or a line stands twice. */
export function readWeekTab(workbook: Workbook, tab: Tab): WeekTab {
  const values: Cells = workbook.values(tab.id);
  const formulas = workbook.formulas(tab.id);
  const text = (row: number, column: number) =>
    standingText(values[row - 1]?.[column - 1], formulas[row - 1]?.[column - 1] ?? "");
  const isHeading = (row: readonly unknown[]) =>
    row.includes(nextWeekHeadings.athlete) && row.includes(nextWeekHeadings.line);
  const heading = values.findIndex(isHeading);
  const headings = values[heading] ?? [];
  const columnOf = Object.fromEntries(
    weekColumns.map((column) => [column, headings.indexOf(nextWeekHeadings[column]) + 1]),
  ) as Record<WeekColumn, number>;
  const missing = weekColumns.filter((column) => columnOf[column] === 0);
  if (missing.length > 0)
    throw new Error(
      notOurTabWords(
        tab.name,
        missing.map((column) => nextWeekHeadings[column]),
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
    if (other !== undefined) throw new Error(lineTwiceWords(tab.name, name, [other, row]));
    rowOf.set(name, row);
  }
  return { tab, columnOf, rowOf, freeRow: lastRow + 1, text, filled };
}
