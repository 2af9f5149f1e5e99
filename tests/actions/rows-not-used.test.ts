import { rowCheck } from "../../src/actions/row-check";
import { squadView } from "../../src/actions/squad-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const today = dayFromIso("2026-06-28")!;

test("the squad counts as many rows not used as the Rows view lists, half-used ones among them", () => {
  const book = memoryWorkbook({
    Sets: [
      ["date", "athlete", "exercise", "set", "reps", "load kg", "speed m/s"],
      ["2026-05-12", "Tomas Reyerson", "back squat", 1, 5, 85, 0.54],
      ["2026-05-12", "Tomas Reyerson", "back squat", 2, 5, 85, 62],
      ["some day", "Tomas Reyerson", "back squat", 3, 5, 85, 0.53],
    ],
  });
  const { problems } = rowCheck(book, today);
  expect(problems.map(({ cell }) => cell).sort()).toEqual(["A4", "G3"]);
  expect(squadView(book, today).rowsNotUsed).toBe(2);
});
