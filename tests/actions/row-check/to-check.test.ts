import { howSureWords } from "../../../src/actions/pages/paper-sentences";
import { printableWeek } from "../../../src/actions/pages/printable-week";
import { rowCheck } from "../../../src/actions/row-check/row-check";
import { squadView } from "../../../src/actions/squad/squad-view";
import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const today = dayFromIso("2026-06-28")!;

const kept = () => {
  return memoryWorkbook({
    Athletes: [["athlete"], ["Tomas Reyerson"], ["Wren Castellow"]],
    Sets: [
      ["date", "athlete", "exercise", "set", "reps", "load kg", "speed m/s"],
      ["2026-05-12", "Tomas Reyerson", "back squat", 1, 5, 85, 0.54],
      ["2026-05-12", "Tomas Reyerson", "back squat", 2, 5, 85, 62],
      ["some day", "Tomas Reyerson", "back squat", 3, 5, 85, 0.53],
      ["2026-05-14", "Tomas Reyersen", "back squat", 1, 5, 85, 0.53],
    ],
  });
};

test("squad and next week count as much to check as the Rows view lists: rows half used, and names not known", () => {
  const book = kept();
  const { problems, names } = rowCheck(book, today);
  expect(problems.map(({ cell }) => cell).sort()).toEqual(["A4", "G3"]);
  expect(names.map(({ cell }) => cell)).toEqual(["B5"]);
  expect(squadView(book, today).toCheck).toBe(3);
  expect(weekView(book, today, null, []).toCheck).toBe(3);
});

test("a row under a name that is not among the athletes is read and counts for nobody, on screen and on paper", () => {
  const book = kept();
  expect(rowCheck(book, today).summary).toBe(
    "5 of 6 rows read, 1 under a name that is not among the athletes",
  );
  const week = printableWeek(book, today, null, []);
  expect(howSureWords(week)).toContain(
    "2 of 6 rows were not used: 1 not read, 1 under a name that is not among the athletes.",
  );
});
