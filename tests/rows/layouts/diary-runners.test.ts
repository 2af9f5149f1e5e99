import { dayFromIso } from "../../../src/coaching/calendar/day";
import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { notes, problems } from "./short";

const tab = (
  cells: readonly (readonly unknown[])[],
  head: readonly (readonly unknown[])[] = [],
) => [...head, ["Date", "Signe Hall", "Maja Ek"], ...cells];
const days = tab([
  ["2026-06-01", 3, 2],
  ["2026-06-02", "", 9.5],
  ["average", 3, 4],
]);

test("a tab for one question of the diary, days down and athletes across, is a diary", () => {
  const [found, ...more] = findTables([{ name: "Soreness", cells: days }]);
  expect([found!.table, found!.sureness >= 0.6, more]).toEqual(["Diary", true, []]);
  const { reading, questions, layout } = found!.understanding;
  expect(reading.records).toMatchObject([
    { day: dayFromIso("2026-06-01"), athlete: "Signe Hall", soreness: 3, row: 2 },
    { day: dayFromIso("2026-06-01"), athlete: "Maja Ek", soreness: 2, row: 2 },
    { day: dayFromIso("2026-06-02"), athlete: "Maja Ek", soreness: 9.5, row: 3 },
  ]);
  expect([reading.issues, questions, layout]).toEqual([[], [], "runners across"]);
  expect([reading.rowsRead, reading.rowsHeading]).toEqual([2, 2]);
});

test("a title above the header asks before the tab's name does, in its own unit", () => {
  const cells = tab([["2026-06-01", 450, 480]], [["Sleep, minutes"]]);
  const { reading } = understandTable("Diary", cells, { title: "Mood" });
  expect(reading.records.map(({ sleepH, mood }) => [sleepH, mood])).toEqual([
    [7.5, null],
    [8, null],
  ]);
});

test("a cell that is no answer is told with its own address", () => {
  const cells = tab([
    ["2026-06-01", 3, "ouch"],
    ["2026-06-02", 3, 4],
  ]);
  const { reading } = understandTable("Diary", cells, { title: "Soreness" });
  expect(reading.issues.map(({ code, cell }) => `${code} ${cell}`)).toEqual(["not-a-number C2"]);
});

test("words under athletes are notes only where the coach says that the tab is the diary", () => {
  const cells = tab([["2026-06-01", "knee hurts", ""]]);
  expect(findTables([{ name: "Comments", cells }])).toEqual([]);
  const { reading } = understandTable("Diary", cells, { title: "Comments", said: true });
  expect(reading.records.map(({ athlete, note }) => [athlete, note])).toEqual([
    ["Signe Hall", "knee hurts"],
  ]);
});

test.each([
  ["loads under a diary's name", "Soreness", tab([["2026-06-01", 82.5, 90]])],
  ["one column alone", "Soreness", days.map((row) => row.slice(0, 2))],
  ["nothing that asks", "June", days],
  [
    "a heading the diary knows beside them",
    "Soreness",
    days.map((row, at) => [...row, at ? 3 : "Mood"]),
  ],
])("%s: no such diary", (_, name, cells) => {
  const found = findTables([{ name, cells }]);
  expect(found.filter(({ understanding }) => understanding.layout === "runners across")).toEqual(
    [],
  );
});

test("weekdays beside the dates are no athlete, and notes of a day are kept", () => {
  const { reading, layout, questions } = understandTable(
    "Diary",
    [
      ["Date", "Day", "Signe Hall", "Maja Ek", "Notes"],
      ["2026-06-01", "Mon", 3, 2, " long drive "],
      ["2026-06-02", "Tue", 4, "", ""],
    ],
    { title: "Soreness" },
  );
  expect(reading.records.map(({ athlete, soreness }) => [athlete, soreness])).toEqual([
    ["Signe Hall", 3],
    ["Maja Ek", 2],
    ["Signe Hall", 4],
  ]);
  expect([layout, notes(reading), problems(reading), questions]).toEqual([
    "runners across",
    ["E2 : long drive"],
    [],
    [],
  ]);
});

test("a column without a name, one of hours and one of a week are no athletes'", () => {
  const { reading, questions } = understandTable(
    "Diary",
    [
      ["Date", "Signe Hall", "Maja Ek", "", "h", "Week 3"],
      ["2026-06-01", 3, 2, 9, 8, 7],
    ],
    { title: "Soreness" },
  );
  expect(reading.records.map(({ athlete }) => athlete)).toEqual(["Signe Hall", "Maja Ek"]);
  expect(questions.map(({ column }) => column).sort()).toEqual([4, 5, 6]);
});
