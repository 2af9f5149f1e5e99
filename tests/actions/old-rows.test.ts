import { squadView } from "../../src/actions/squad-view";
import { weekView } from "../../src/actions/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const book = memoryWorkbook({
  Athletes: [["Athlete"], ["Ilka Brandmoor"]],
  Sets: [
    ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)"],
    ["2025-07-04", "Ilka Brandmoor", "back squat", 1, 5, 80],
    ["2025-07-08", "Ilka Brandmoor", "back squat", 1, 5, 80],
  ],
});
const seen = (today: string) => {
  const day = dayFromIso(today)!;
  return [squadView(book, day).asOfWords, weekView(book, day, null, []).notes[0]];
};

test("a workbook of another year says whose rows it judges, and from which week it goes on", () => {
  expect(seen("2026-06-10")).toEqual([
    "Rows up to 13 Jul 2025",
    "The last rows are of the week to 13 Jul 2025: what is proposed goes on from there.",
  ]);
  expect(seen("2025-09-10")).toEqual([
    "Rows up to 13 Jul",
    "The last rows are of the week to 13 Jul: what is proposed goes on from there.",
  ]);
});

test("rows that are still current are judged as of today, and nothing is said of it", () => {
  expect(seen("2025-07-10")).toEqual([
    "Rows up to 10 Jul",
    expect.not.stringContaining("The last rows"),
  ]);
});
