import { spreadsheetWords } from "../../src/words/spreadsheet";
import { cellsOf, openServices } from "../faults/held-by-services";
import { monday, today } from "../faults/small-club";

const week = { today, monday, changes: [], athletes: null };

test.each([
  "Spreadsheet.getSheets",
  "Range.getValues",
  "Range.getFormulas",
  "Properties.getProperties",
])("%s answers only in part: nothing is written, and asking again writes all", async (call) => {
  const host = await openServices();
  // A first week, so that its cells and what is remembered of them are read as well.
  host.run("writeWeek", [{ ...week, athletes: ["Tomas Reyerson"] }]);
  const before = cellsOf(host);
  let shortened = 0;
  host.calls.watch = {
    answered: (name, result) => {
      if (name !== call || shortened > 0) return result;
      shortened++;
      return Array.isArray(result)
        ? result.slice(1)
        : Object.fromEntries(Object.entries(result as object).slice(1));
    },
  };
  expect(() => host.run("writeWeek", [week])).toThrow(spreadsheetWords.answeredInPart);
  host.calls.watch = {};
  expect(shortened).toBe(1);
  expect(cellsOf(host)).toEqual(before);
  host.run("writeWeek", [week]);
  const lines = (cells: typeof before) => cells["Next week"]!.length;
  expect(lines(cellsOf(host))).toBeGreaterThan(lines(before));
  host.dispose();
});
