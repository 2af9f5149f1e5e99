import { readAthletesArgument } from "../../../src/rows/argument/athletes-argument";

const names = (argument: unknown) =>
  readAthletesArgument(argument).asked.map(({ athlete }) => athlete);

test("one cell is one athlete, and refusals are thrown", () => {
  expect(readAthletesArgument(" Ilka  Brandmoor ")).toEqual({
    asked: [{ athlete: "Ilka Brandmoor", record: null }],
    single: true,
    table: null,
  });
  expect(readAthletesArgument([["Ilka"]]).single).toBe(true);
  expect(names("")).toEqual([""]);
});

test("a column keeps its blanks inside, loses its heading and its blank end", () => {
  const column = [["Athlete"], ["Ilka"], [""], ["Kofi"], [""], [""]];
  expect(names(column)).toEqual(["Ilka", "", "Kofi"]);
  expect(readAthletesArgument(column).single).toBe(false);
  expect(names([["Ilka"], ["Kofi"]])).toEqual(["Ilka", "Kofi"]);
});

test("a count or a sum below the names is nobody, Max is somebody", () => {
  const sums = ["Total", "Summe: 3 Athleten", "3 athletes"];
  const column = ["Athlete", "Ilka", "Max", ...sums];
  expect(names(column.map((cell) => [cell]))).toEqual(["Ilka", "Max"]);
  expect(names(column.map((cell, at) => [at, cell, ""]))).toEqual(["Ilka", "Max"]);
  expect(names("Total")).toEqual(["Total"]);
});

test("a row of names is read along", () => {
  expect(names([["Ilka", "Kofi", ""]])).toEqual(["Ilka", "Kofi"]);
});

test("the whole Athletes table gives each athlete its own row, title lines above the header none", () => {
  const { asked, table } = readAthletesArgument([
    ["Quillbeck RC", "", ""],
    ["Event", "Name", "Experience"],
    ["1500 m", "Ilka", "trained"],
    ["", "", ""],
    ["800 m", "Wren", "novice"],
    ["", "", ""],
  ]);
  expect(
    asked.map(({ athlete, record }) => [athlete, record?.experience ?? null, record?.row ?? null]),
  ).toEqual([
    ["Ilka", "trained", 3],
    ["", null, null],
    ["Wren", "novice", 5],
  ]);
  expect(table?.rowsRead).toBe(2);
  const untitled = [
    ["Event", "Name"],
    ["1500 m", "Ilka"],
  ];
  expect(names(untitled)).toEqual(["Ilka"]);
  expect(readAthletesArgument(untitled).single).toBe(false);
});

test.each([
  ["First", "Last"],
  ["First name", "Surname"],
  ["Vorname", "Nachname"],
])("names apart under “%s” and “%s” are one name, and their headings nobody", (first, last) => {
  const table = [
    [first, last, "Age"],
    ["Ilka", "Brandmoor", 24],
    ["Wren", "Castellow", 17],
  ];
  const { asked } = readAthletesArgument(table);
  expect(asked.map(({ athlete, record }) => [athlete, record?.under18])).toEqual([
    ["Ilka Brandmoor", false],
    ["Wren Castellow", true],
  ]);
  expect(names(table.map((line) => line.slice(0, 2)))).toEqual([
    "Ilka Brandmoor",
    "Wren Castellow",
  ]);
});

test("an empty range asks about nobody", () => {
  expect(names([])).toEqual([]);
  expect(names([[""], [""]])).toEqual([]);
});

test("a hole between two names is a blank cell, and keeps its row", () => {
  const holed: unknown[] = ["Ilka Brandmoor"];
  holed[2] = "Dario Quell";
  expect(readAthletesArgument([holed]).asked.map(({ athlete }) => athlete)).toEqual([
    "Ilka Brandmoor",
    "",
    "Dario Quell",
  ]);
});
