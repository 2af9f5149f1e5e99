import { IssueLog } from "../../src/rows/issue-log";
import { understandTable } from "../../src/rows/read-table";
import { wordsForFigures } from "../../src/rows/words-for-figures";
import { notes, today } from "./layouts/short";

const records = [
  { row: 2, athlete: "Ilka", day: 100 },
  { row: 3, athlete: "Bram", day: 101 },
];
const words = (log: IssueLog, of: readonly object[] = records) =>
  wordsForFigures(log, of).map(({ cell, row, column, athlete, day, span, words: said }) =>
    [cell, row, column, athlete, day, span, said].join(" "),
  );

test("words kept in place of a figure are of whom and of which day their row is", () => {
  const log = new IssueLog("Sets");
  log.keep(1, 3, "ill");
  log.keep(1, 3, "ill");
  log.keep(2, 4, "sick");
  log.keep(7, 4, "sick");
  expect(words(log)).toEqual(["D2 2 4 Ilka 100 day ill", "E3 3 5 Bram 101 day sick"]);
  // Nobody's, or of no day.
  expect(
    words(log, [
      { row: 2, massKg: 20 },
      { row: 3, athlete: "Bram" },
    ]),
  ).toEqual([]);
});

test("cells told as slips are notes where they speak of pain or illness, whole rows are not", () => {
  const log = new IssueLog("Sets");
  log.add("not-a-number", 1, 3, "calf pain");
  log.add("not-a-number", 2, 3, "heavy");
  log.add("needed-blank", 2, -1, "injured");
  expect(words(log)).toEqual(["D2 2 4 Ilka 100 day calf pain"]);
});

test("of cells that were laid out anew the coach's own place is told", () => {
  const log = new IssueLog("Sets", (row, column) => ({ row: row + 1, column: column + 2 }));
  log.keep(0, 1, "krank");
  expect(words(log)).toEqual(["D2 2 4 Ilka 100 day krank"]);
});

test("a reading brings them with its other notes, and none where there are none", () => {
  const day = new Date(2026, 4, 5);
  const read = (...rows: unknown[][]) =>
    understandTable("Runs", [["Date", "Athlete", "Kind", "min", "Notes"], ...rows], { today })
      .reading;
  const ill = read([day, "Ilka", "easy", 40, "windy"], [day, "Bram", "easy", "ill", ""]);
  expect(notes(ill)).toEqual(["E2 Ilka: windy", "D3 Bram: ill"]);
  expect(notes(read([day, "Bram", "easy", "ill", ""]))).toEqual(["D2 Bram: ill"]);
  // A mark of no figure says nothing more.
  for (const minutes of [40, "-"]) {
    const { notes: none, rowsRead } = read([day, "Ilka", "easy", minutes, ""]);
    expect([none, rowsRead]).toEqual([undefined, 1]);
  }
});

test("in the list of athletes they are of no day", () => {
  const log = new IssueLog("Athletes");
  log.add("state-undated", 1, 2, "injured");
  expect(words(log, [{ row: 2, athlete: "Ilka" }])).toEqual(["C2 2 3 Ilka  table injured"]);
});
