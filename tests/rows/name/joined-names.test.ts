import { joinedNames } from "../../../src/rows/name/joined-names";
import { readAthletes, readSets } from "../readers";

// Names in two columns; all invented.

const day = new Date(2026, 4, 5);
const names = (head: readonly string[], ...rows: unknown[][]) =>
  readSets([
    ["Date", ...head, "Lift", "kg"],
    ...rows.map((row) => [day, ...row, "Squat", 80]),
  ]).records.map(({ athlete }) => athlete);

test("first name and surname in two columns are one name, in whatever order and language they stand", () => {
  for (const head of [
    "First name|Surname",
    "First|Last",
    "Name|Surname",
    "Vorname|Nachname",
    "Vorname|Name",
    "Prénom|Nom",
    "Athlete|Family name",
  ])
    expect(names(head.split("|"), ["Ada", "Thorne"], ["Ada", "Quist"])).toEqual([
      "Ada Thorne",
      "Ada Quist",
    ]);
  for (const head of ["Surname|First name", "Name|Vorname", "Nachname|Vorname"])
    expect(names(head.split("|"), ["Thorne", "Ada"], ["Quist", "Ada"])).toEqual([
      "Ada Thorne",
      "Ada Quist",
    ]);
});

test("either may stand in the very first column", () => {
  const first = (head: readonly string[], ...names: readonly string[]) =>
    readSets([
      [...head, "Date", "Lift", "kg"],
      [...names, day, "Squat", 80],
    ]).records.map(({ athlete }) => athlete);
  expect(first(["Surname", "Name"], "Thorne", "Ada")).toEqual(["Ada Thorne"]);
  expect(first(["Vorname", "Name"], "Ada", "Thorne")).toEqual(["Ada Thorne"]);
});

test("a name of which one part is blank is the other; whole names are left whole", () => {
  const rows = [
    ["Ada", ""],
    ["", "Quist"],
    ["Ada", "Ada Thorne"],
    ['"', '"'],
  ];
  expect(names(["First name", "Surname"], ...rows)).toEqual([
    "Ada",
    "Quist",
    "Ada Thorne",
    "Ada Thorne",
  ]);
});

test("the squad's list is read so too, and headings that come again stay headings", () => {
  const head = ["Surname", "First name", "Group"];
  const { records, rowsHeading } = readAthletes([
    head,
    ["Thorne", "Ada", "A"],
    head,
    ["Quist", "Bram", "B"],
  ]);
  expect(records.map(({ athlete, group }) => [athlete, group])).toEqual([
    ["Ada Thorne", "A"],
    ["Bram Quist", "B"],
  ]);
  expect(rowsHeading).toBe(2);
});

test("a German load beside a first name is no surname, and a lone first name is a name", () => {
  const { records } = readSets([
    ["Datum", "Vorname", "Übung", "Last"],
    [day, "Ada", "Kniebeuge", 80],
  ]);
  expect(records).toEqual([]);
  const cells = [["Date", "First name", "Lift", "kg"]];
  expect(joinedNames(cells)).toBe(cells);
});

test("the first and last day of a spell are no names", () => {
  const cells = [
    ["Athlete", "First", "Last", "May do"],
    ["Ada Thorne", day, day, "out"],
  ];
  expect(joinedNames(cells)).toBe(cells);
});

test("what the coach said of one of the two columns holds", () => {
  const cells = [
    ["Name", "Surname"],
    ["Ada", "Thorne"],
  ];
  const answers = { columns: [{ column: 2, field: null }] };
  expect(joinedNames(cells, answers)).toBe(cells);
  expect(joinedNames(cells, { columns: [{ column: 3, field: null }] })[1]).toEqual([
    "Ada Thorne",
    "",
  ]);
});

test("“First” and “Last” head names where at least half of what stands under them may be some", () => {
  const cells = [
    ["First", "Last"],
    ["Ada", "Thorne"],
    [12, 14],
  ];
  expect(joinedNames(cells)[1]).toEqual(["Ada Thorne", ""]);
  const fewer = [...cells, [13, 15]];
  expect(joinedNames(fewer)).toBe(fewer);
});
