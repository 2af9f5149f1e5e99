import { columnName } from "../../rows/value/cell-address";
import { cautions } from "../../words/cautions";
import { headingIn, weekTitleWords } from "../../words/next-week-tab";
import type { NumberStyle } from "../../words/printed-numbers";
import { ownTabNames } from "../../words/tabs";
import type { Tab, Workbook, Written } from "../workbook";
import { typedColumn, type WeekColumn, weekColumns } from "./plan-lines";
import { findWeekTab, readWeekTab } from "./week-tab";

const headingRow = 4;
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
  workbook.keepInView(tab.id, 1);
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
