import { nameKey } from "../../coaching/record/name-key";
import { athleteTwiceWords, notSeasonTabWords, seasonTabWords } from "../../words/season-tab";
import { ownTabNames } from "../../words/tabs";
import { standingText } from "../week/cell-text";
import type { Tab, Workbook } from "../workbook";

/** The `Season` tab as it stands; rows and columns count from 1. */
export type SeasonTab = {
  readonly tab: Tab;
  readonly headingRow: number;
  readonly athleteColumn: number;
  readonly rowOf: ReadonlyMap<string, number>;
  /** Column of each week, by its Monday "2026-06-29". */
  readonly columnOf: ReadonlyMap<string, number>;
  /** First row and first column with nothing in them nor beyond them. */
  readonly freeRow: number;
  readonly freeColumn: number;
  readonly text: (row: number, column: number) => string;
};

const headingRow = 3;
const namesWidth = 150;

/** Makes the tab when it is missing and heads it when it is empty. */
export function ensureSeasonTab(workbook: Workbook): Tab {
  const name = ownTabNames.season;
  const tab = workbook.tabs().find((one) => one.name === name) ?? workbook.addTab(name);
  const isEmpty = workbook.values(tab.id).every((row) => row.every((cell) => cell === ""));
  if (!isEmpty) return tab;
  workbook.dress(tab.id, headingRow, [namesWidth]);
  // Weeks are read along a row: whose it is stays beside them.
  workbook.keepInView(tab.id, 1);
  workbook.write(tab.id, {
    row: 1,
    column: 1,
    values: [[seasonTabWords.title], [seasonTabWords.legend], [seasonTabWords.athlete]],
  });
  return tab;
}

/** Reads the tab. Throws a sentence when its heading is gone or an athlete stands twice. */
export function readSeasonTab(workbook: Workbook, tab: Tab): SeasonTab {
  const values = workbook.values(tab.id);
  const formulas = workbook.formulas(tab.id);
  const text = (row: number, column: number) =>
    standingText(values[row - 1]?.[column - 1], formulas[row - 1]?.[column - 1] ?? "");
  const heading = values.findIndex((row) => row.includes(seasonTabWords.athlete)) + 1;
  if (heading === 0) throw new Error(notSeasonTabWords(tab.name));
  const athleteColumn = (values[heading - 1] ?? []).indexOf(seasonTabWords.athlete) + 1;
  const width = Math.max(...values.map((row) => row.length));
  const columnOf = new Map<string, number>();
  for (let column = 1; column <= width; column++) {
    const week = text(heading, column);
    if (/^\d{4}-\d{2}-\d{2}$/.test(week) && !columnOf.has(week)) columnOf.set(week, column);
  }
  const rowOf = new Map<string, number>();
  for (let row = heading + 1; row <= values.length; row++) {
    const key = nameKey(text(row, athleteColumn));
    const other = rowOf.get(key);
    if (key !== "" && other !== undefined) {
      throw new Error(athleteTwiceWords(tab.name, text(row, athleteColumn), [other, row]));
    }
    if (key !== "") rowOf.set(key, row);
  }
  // The title runs over the columns beside it; only what stands from the headings on takes room.
  let [lastRow, lastColumn] = [heading, athleteColumn];
  for (let row = heading; row <= values.length; row++) {
    for (let column = 1; column <= width; column++) {
      if (text(row, column) === "") continue;
      lastRow = Math.max(lastRow, row);
      lastColumn = Math.max(lastColumn, column);
    }
  }
  return {
    tab,
    headingRow: heading,
    athleteColumn,
    rowOf,
    columnOf,
    freeRow: lastRow + 1,
    freeColumn: lastColumn + 1,
    text,
  };
}
