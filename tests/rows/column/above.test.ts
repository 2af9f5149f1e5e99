import { cellAbove } from "../../../src/rows/column/above";
import { IssueLog } from "../../../src/rows/issue-log";
import type { TableView } from "../../../src/rows/table-view";
import { isBlank } from "../../../src/rows/value/blank";

const view = (...cells: readonly string[]): TableView => ({
  table: "Sets",
  cells: cells.map((cell) => [cell]),
  headerRow: -1,
  first: 0,
  end: cells.length,
  fields: {},
  repColumns: [],
  year: null,
  log: new IssueLog("Sets"),
});

test("a row asked for again, or an earlier one, finds the same as before, and an end", () => {
  const above = cellAbove(view("", "", "Ilka", "", ""), 0, isBlank);
  expect([4, 4, 1, 3].map(above)).toEqual(["Ilka", "Ilka", "", "Ilka"]);
});

test("marks in the first rows repeat nothing, whichever is asked for first", () => {
  expect([2, 1].map(cellAbove(view('"', '"', "Ilka"), 0))).toEqual(["", ""]);
});
