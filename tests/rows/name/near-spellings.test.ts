import { cellOfName } from "../../../src/rows/name/cell-of-name";
import { checkNames } from "../../../src/rows/name/check-names";
import { hasDoubtfulLetters } from "../../../src/rows/name/doubtful-letters";
import { editDistance } from "../../../src/rows/name/edit-distance";
import { nameIssues } from "../../../src/rows/name/name-issues";
import { nameLink } from "../../../src/rows/name/near-name";
import { proposeNames } from "../../../src/rows/name/propose-names";
import { understandTable } from "../../../src/rows/read-table";

test.each([
  ["three letters must be the same", "Ann", "Ana", null],
  ["four may have one slip", "Anne", "Anna", "spelling"],
  ["seven may not have two", "Brandmo", "Brundmu", null],
  ["eight may", "Brandmoo", "Brundmou", "spelling"],
  ["but not three", "Brandmoor", "Brundmuut", null],
  ["a slip over two words", "Ilk Abrandmoor", "Ilka Brandmoor", "spelling"],
  ["words in brackets do not count", "Ilka Brandmoor (U18)", "ilka brandmoor", "spelling"],
  ["nor do brackets of one letter", "Ilka Brandmoor (J)", "Brandmoor Ilka", "order"],
  ["whole words take their places before initials", "K Kofi", "Kofi Kant", "initial"],
  ["every word must find its own", "Kofi Anstruther", "Kofi Reyerson", null],
  ["and only once", "Kofi Kofi", "Kofi Anstruther", null],
  ["a part with a slip is a part", "Brandmor", "Ilka Brandmoor", "part"],
  ["commas and lines part words", "Brandmoor,Ilka", "Ilka_Brandmoor", "order"],
  ["a letter that begins no word", "Ilka B.", "Ilka Castellow", null],
  ["brackets part words too", "Ilka(U18)Brandmoor", "Ilka Brandmoor", "spelling"],
  ["nothing but brackets is nobody's name", "(guest)", "(visitor)", null],
  ["three words, one an initial", "Ilka M. Brandmoor", "Ilka Mariella Brandmoor", "initial"],
])("%s: “%s” and “%s”", (_, one, other, link) => {
  expect(nameLink(one, other)).toBe(link);
  expect(nameLink(other, one)).toBe(link);
});

test("a word takes the very same one before a near one", () => {
  expect(nameLink("Jana Jins", "Jans Jana")).toBe("spelling");
});

// Damerau 1964 counts a letter put in, left out or changed, and two neighbours swapped, as one each.
test.each([
  ["", "abc", 3],
  ["abc", "abxc", 1],
  ["abc", "bac", 1],
  ["abc", "acb", 1],
  ["ab", "ba", 1],
  ["abc", "cab", 2],
  ["abcd", "badc", 2],
  ["ca", "abc", 3],
  ["kofi", "koffie", 2],
])("from “%s” to “%s” are %p changes", (one, other, changes) => {
  expect(editDistance(one, other)).toBe(changes);
  expect(editDistance(other, one, changes)).toBe(changes);
  expect(editDistance(one, other, changes - 1)).toBeGreaterThan(changes - 1);
});

test("letters of one alphabet in a word are ordinary, and so is a word of each", () => {
  expect(["Τomas", "Tomаs", "Ann \u2066b\u2069", "\u202EAnn"].map(hasDoubtfulLetters)).toEqual(
    Array(4).fill(true),
  );
  expect(["Tomas Том", "Ann 2", "Том 2", ""].map(hasDoubtfulLetters)).toEqual(Array(4).fill(false));
});

const rows = (...names: string[]) => names.map((athlete, at) => ({ row: at + 2, athlete }));
const squad = ["Ilka Brandmoor", "Kofi Anstruther", "Kofi Aldergate"];

test("an unknown name is counted over all its rows, known ones and others between them", () => {
  const written = rows("Kofi", "Kofi", "Ilka Brandmoor", "Ilka Brandmoor", "KOFI", "Zed", "Kofi");
  const athletes = squad.map((athlete) => ({ athlete }));
  expect(checkNames(written, athletes)).toEqual([
    { name: "Kofi", firstRow: 2, rows: 4, near: ["Kofi Anstruther", "Kofi Aldergate"] },
    { name: "Zed", firstRow: 7, rows: 1, near: [] },
  ]);
  expect(nameIssues("Runs", written, athletes)[0]).toMatchObject({
    table: "Runs",
    code: "unknown-athlete",
    row: 2,
    column: 0,
    cell: "A2",
    found: "Kofi",
    facts: { rows: 4, near: "Kofi Anstruther or Kofi Aldergate" },
    dropsRow: false,
  });
});

test("whom a spelling may mean: the likeliest first, with its rows", () => {
  const names = ["Kofi Anstruter", "Anstruther, Kofi", "K. Anstruther", "Kofi Anstruther Lee"];
  expect(proposeNames(rows("Kofi Anstruther", "KOFI anstruther", "Zed"), names)).toEqual([
    {
      written: "Kofi Anstruther",
      rows: 2,
      may: [
        { athlete: "Anstruther, Kofi", link: "order" },
        { athlete: "Kofi Anstruter", link: "spelling" },
        { athlete: "K. Anstruther", link: "initial" },
        { athlete: "Kofi Anstruther Lee", link: "part" },
      ],
    },
  ]);
});

test("only the very pair that was answered as two athletes is not asked again", () => {
  const asked = (written: string, athlete: string) =>
    proposeNames(rows("Kofi"), squad, { same: [], different: [{ written, athlete }] }).flatMap(
      ({ may }) => may.map((one) => one.athlete),
    );
  expect(asked("kofi", "Kofi ANSTRUTHER")).toEqual(["Kofi Aldergate"]);
  expect(asked("Zed", "Kofi Anstruther")).toEqual(["Kofi Anstruther", "Kofi Aldergate"]);
  expect(asked("Kofi", "Ilka Brandmoor")).toEqual(["Kofi Anstruther", "Kofi Aldergate"]);
});

test("of spellings without an Athletes table the one with most letters stands, signs do not count", () => {
  const proposed = proposeNames(rows("K. - . - . - Anstruther", "Kofi Anstruther", "Zed"), []);
  expect(proposed.map(({ written, may }) => [written, may])).toEqual([
    ["K. - . - . - Anstruther", [{ athlete: "Kofi Anstruther", link: "initial" }]],
  ]);
});

test("without an Athletes table each group of near spellings has its own fullest one", () => {
  const proposed = proposeNames(rows("Ilka Brandmoor", "Kofi A.", "Ilka B.", "Kofi Aldergate"), []);
  expect(proposed.map(({ written, may }) => [written, may.map(({ athlete }) => athlete)])).toEqual([
    ["Kofi A.", ["Kofi Aldergate"]],
    ["Ilka B.", ["Ilka Brandmoor"]],
  ]);
});

test("a table of which no row could be read has no names to put right", () => {
  const names = { same: [{ written: "kofi", athlete: "Kofi Anstruther" }], different: [] };
  const { reading } = understandTable(
    "Runs",
    [
      ["Date", "Athlete", "Minutes"],
      ["soon", "Kofi", 40],
    ],
    { names },
  );
  expect([reading.records, reading.rowsReported]).toEqual([[], 1]);
});

test("an answered spelling is put right in records of athletes, races keep their runners as written", () => {
  const names = { same: [{ written: "kofi", athlete: "Kofi Anstruther" }], different: [] };
  const races = understandTable(
    "Races",
    [
      ["Date", "Race", "Who"],
      ["2026-05-12", "Quillbeck mile", "Kofi"],
    ],
    { names },
  ).reading;
  expect(races.records.map(({ who }) => who)).toEqual(["Kofi"]);
  const runs = understandTable(
    "Runs",
    [
      ["Date", "Athlete", "Minutes"],
      ["2026-05-12", "Kofi", 40],
      ["2026-05-13", "Ilka", 40],
    ],
    { names },
  ).reading;
  expect(runs.records.map(({ athlete, minutes }) => [athlete, minutes])).toEqual([
    ["Kofi Anstruther", 40],
    ["Ilka", 40],
  ]);
});

test("a name's own cell: in its row, else the nearest above, else the column of athletes", () => {
  const cells = [
    ["Kofi", "", "x"],
    ["Date", "Athlete", "Load"],
    [46_154, "Ilka ", 60],
    [46_155, "", 62],
    [46_156, "Zed", "ilka"],
  ];
  expect(cellOfName(cells, 3, 2, "ilka")).toBe("B3");
  expect(cellOfName(cells, 4, 2, "Ilka")).toBe("B3");
  // Who wrote the row down may be an athlete of it too.
  expect(cellOfName([["Ilka", 60, "Ilka"]], 1, 3, "Ilka")).toBe("C1");
  expect(cellOfName(cells, 5, 2, "Ilka")).toBe("C5");
  expect(cellOfName(cells, 5, null, "Zed")).toBe("B5");
  expect(cellOfName(cells, 5, 2, "Kofi")).toBe("A1");
  expect(cellOfName(cells, 4, 3, "Nobody")).toBe("C4");
  expect(cellOfName(cells, 4, null, "Nobody")).toBe("A4");
});
