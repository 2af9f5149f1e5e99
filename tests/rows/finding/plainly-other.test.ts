import type { Cells } from "../../../src/rows/cells";
import { plainlyOther } from "../../../src/rows/finding/plainly-other";
import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";

const day = "2026-05-12";
const name = "Ilka Brandmoor";
const saidToBe = (table: TableName, cells: Cells) =>
  plainlyOther(table, cells, understandTable<TableName>(table, cells), {});

const sets = (...more: readonly string[]) => [
  ["Date", "Athlete", "Exercise", "Set", "Load (kg)", ...more],
  [day, name, "back squat", 1, 80, ...more.map(() => 5)],
];
const runs = [
  ["Date", "Athlete", "Kind", "Minutes"],
  [day, name, "easy", 40],
];
const jumps = [
  ["Date", "Athlete", "Test", "Height (cm)"],
  [day, name, "CMJ", 31],
];

test("a range of which nothing can be read as the table it is said to be is the one its headings tell", () => {
  const rules = [
    ["Rule", "Value"],
    ["Weeks of the season", 18],
  ];
  expect([saidToBe("Runs", rules), saidToBe("Plates", rules)]).toEqual(["Rules", "Rules"]);
  expect(saidToBe("Rules", rules)).toBeNull();
  // Without a load no row of sets, though date, athlete and exercise are read.
  expect(saidToBe("Sets", jumps)).toBe("Jumps");
});

test("so is one of which at most half as many headings are read", () => {
  // Date and athlete, of four.
  expect([saidToBe("Diary", runs), saidToBe("Runs", jumps)]).toEqual(["Runs", "Jumps"]);
  // Date, athlete and exercise, of five and of six.
  expect(saidToBe("Jumps", sets())).toBeNull();
  expect(saidToBe("Jumps", sets("Reps"))).toBe("Sets");
});

test("what is there as the table it is said to be is no other, though none of its rows can be read", () => {
  const unread = [jumps[0]!, ["soon", name, "CMJ", 31]];
  expect(saidToBe("Jumps", unread)).toBeNull();
  const beside = runs.map((row, at) => [...row, "", ...(unread[at] ?? [])]);
  expect(saidToBe("Jumps", beside)).toBeNull();
});

test("of several in one range the surest is told", () => {
  const beside = runs.map((row, at) => [...row, "", ...(jumps[at] ?? [])]);
  expect(saidToBe("Plates", beside)).toBe("Runs");
});

test("what no table plainly is, or bare numbers that may be loads, is no other table", () => {
  expect(saidToBe("Runs", [["Something"], ["else"]])).toBeNull();
  const days = [
    ["Date", "Name"],
    [day, name],
  ];
  expect(saidToBe("Sets", days)).toBeNull();
  const bare = (cell: unknown) => [
    ["Athlete", "Group", "Event", "Birth year", "12 May 2026", "14 May 2026"],
    [name, "track", "1500 m", 2002, 80, 85],
    ["Joss Whitterby", "track", "5000 m", 1999, cell, 60],
  ];
  expect([saidToBe("Sets", bare(60)), saidToBe("Sets", bare("??"))]).toEqual([null, null]);
  expect(saidToBe("Runs", bare(60))).toBe("Athletes");
});
