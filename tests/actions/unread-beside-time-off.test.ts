import { squadView } from "../../src/actions/squad/squad-view";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

// Athletes who came each week, and whose rows say little; names, days and figures are invented.

const today = dayFromIso("2026-05-03")!;
const headings = ["Date", "Athlete", "Exercise", "Reps", "Load (kg)", "Movement ok"];
const days = ["2026-04-09", "2026-04-16", "2026-04-23", "2026-04-30"];
const seen = (loads: readonly unknown[]) => {
  const Sets = [
    headings,
    ...days.map((day, at) => [day, "Fern Abbot", "squat", 5, loads[at], "y"]),
    ...days.map((day) => [day, "Colin Dray", "squat", 5, 80, "y"]),
  ];
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Sessions a week"],
      ["Fern Abbot", 1],
      ["Colin Dray", 1],
    ],
    Sets,
  });
  const line = weekView(book, today, null, []).lines.find(
    ({ athlete }) => athlete === "Fern Abbot",
  )!;
  const squad = squadView(book, today).lines.find(({ athlete }) => athlete === "Fern Abbot")!;
  return { why: line.why, notUsed: squad.rowsNotUsed };
};

test("time off that may be rows not read says how many, and where to look", () => {
  const { why, notUsed } = seen([50, 50, "heavy", "as ever"]);
  expect(why[0]).toBe("Off 14 days longer than usual: 20 % off the load before, half the sets.");
  expect(why).toContain(
    "2 rows of this athlete have cells that were not used: look under Rows first.",
  );
  expect(notUsed).toBe(2);
});

test("so does a first week that is asked for while every row waits, and the squad’s line counts them", () => {
  const { why, notUsed } = seen(["heavy", "heavy", "heavy", "heavy"]);
  expect(why.slice(0, 2)).toEqual([
    "No work sets in the rows yet: write the first week by hand.",
    "4 rows of this athlete have cells that were not used: look under Rows first.",
  ]);
  expect(notUsed).toBe(4);
});

test("a week that goes on says nothing of an old row", () => {
  const { why, notUsed } = seen(["heavy", 50, 50, 50]);
  expect(why.join(" ")).not.toMatch(/look under Rows/);
  expect(notUsed).toBe(1);
});
