import { readTable } from "../../../src/rows/read-table";
import { today } from "../layouts/short";

const sets = (...rows: readonly unknown[][]) =>
  readTable(
    "Sets",
    [
      ["Date", "Athlete", "Exercise", "Load (kg)", "Notes"],
      ["2026-05-12", "Ilka Brandmoor", "back squat", 80, ""],
      ...rows,
    ],
    { today },
  );
const told = (...rows: readonly unknown[][]) => {
  const { issues, rowsRead, rowsReported } = sets(...rows);
  return [...issues.map(({ code, cell }) => `${code} ${cell}`), rowsRead, rowsReported];
};

test.each([
  [["Half-term – no gym this week"], "A3"],
  [["", "", "", "", "no gym this week"], "E3"],
  [["", "No gym this week", "", false], "B3"],
  [["taper", "taper", "taper", "taper", "taper"], "A3"],
])("a comment across the tab is no row and no date to be typed: %j", (row, cell) => {
  expect(told(row)).toEqual([`words-alone ${cell}`, 1, 1]);
});

test.each([
  // A row that was begun, or a day that cannot be read beside what was done.
  [["", "Ilka Brandmoor"], "needed-blank A3"],
  [["2026-05-14"], "needed-blank B3"],
  [["14 May"], "needed-blank B3"],
  [["Tuesday", "Ilka Brandmoor", "back squat", 80], "not-a-day A3"],
  [["??"], "not-a-day A3"],
])("what may be a row is asked for what it lacks: %j", (row, problem) => {
  expect(told(row).slice(0, 1)).toEqual([problem]);
});

test.each(["Notes", ""])(
  "under merged cells a comment is no set of the athlete above: “%s”",
  (heading) => {
    const { records, issues } = readTable(
      "Sets",
      [
        ["Date", "Athlete", "Exercise", "Load (kg)", "Reps", heading],
        ["2026-05-12", "Ilka Brandmoor", "back squat", 80, 5, ""],
        ["", "", "", 80, 5, ""],
        ["", "", "", "", "", "stopped, knee"],
        ["", "", "", "", 5, "no load said"],
      ],
      { today },
    );
    expect(records.map(({ row, loadKg }) => [row, loadKg])).toEqual([
      [2, 80],
      [3, 80],
      [5, null],
    ]);
    expect(issues.map(({ code, cell }) => `${code} ${cell}`)).toEqual([
      "words-alone F4",
      "load-blank D5",
    ]);
  },
);

test("a list of athletes takes a name alone", () => {
  const { records, issues } = readTable("Athletes", [
    ["Athlete", "Group"],
    ["Ilka of the hills", ""],
  ]);
  expect([records.length, issues]).toEqual([1, []]);
});
