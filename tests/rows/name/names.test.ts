import fc from "fast-check";
import { checkNames } from "../../../src/rows/name/check-names";
import { editDistance } from "../../../src/rows/name/edit-distance";
import { withNames } from "../../../src/rows/name/name-answers";
import { nameIssues } from "../../../src/rows/name/name-issues";
import { nameLink } from "../../../src/rows/name/near-name";
import { proposeNames } from "../../../src/rows/name/propose-names";
import { understandTable } from "../../../src/rows/read-table";
import { csvCells } from "../layouts/csv-cells";

const squad = ["Ilka Brandmoor", "Kofi Anstruther", "Oona Petrakell", "Wren Castellow"];

test("spelling, initials, parts and order link two spellings; other people are not linked", () => {
  expect(nameLink("Ilka Brandmor", "Ilka Brandmoor")).toBe("spelling");
  expect(nameLink("I. Brandmoor", "Ilka Brandmoor")).toBe("initial");
  expect(nameLink("Brandmor I.", "Ilka Brandmoor")).toBe("initial");
  expect(nameLink("ilka b", "Ilka Brandmoor")).toBe("initial");
  expect(nameLink("Brandmoor Ilka", "Ilka Brandmoor")).toBe("order");
  expect(nameLink("Kofi", "Kofi Anstruther")).toBe("part");
  expect(nameLink("Bea L (U18)", "Bea Lindqvale")).toBe("initial");
  expect(nameLink("Kofi A.", "Ilka Brandmoor")).toBeNull();
  expect(nameLink("I. B.", "Ilka Brandmoor")).toBeNull();
  expect(nameLink("", "Ilka")).toBeNull();
});

test("distance between words: none to itself, the same both ways, never past the longer word", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
      expect(editDistance(a, a)).toBe(0);
      expect(editDistance(a, b)).toBe(editDistance(b, a));
      expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
    }),
  );
  expect(editDistance("brandmoor", "brandmroo")).toBe(2);
  expect(editDistance("kofi", "kfoi")).toBe(1);
});

test("up to a number of changes the distance is the same, and beyond it only said to be more", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 9 });
  fc.assert(
    fc.property(word, word, fc.integer({ min: 0, max: 4 }), (a, b, most) => {
      const whole = editDistance(a, b);
      const bounded = editDistance(a, b, most);
      if (whole <= most) expect(bounded).toBe(whole);
      else expect(bounded).toBeGreaterThan(most);
    }),
    { numRuns: 2000 },
  );
});

test("the log's four spellings of one athlete and three of another are proposed as one", () => {
  const { records } = understandTable(
    "Sets",
    csvCells("03-shorthand-log-decimal-comma.csv", "text"),
  ).reading;
  const jumps = understandTable("Jumps", csvCells("03-shorthand-log-decimal-comma.csv", "text"))
    .reading.records;
  const proposals = proposeNames([...records, ...jumps], squad);
  expect(proposals.map(({ written, may }) => [written, may.map(({ athlete }) => athlete)])).toEqual(
    [
      ["Ilka", ["Ilka Brandmoor"]],
      ["Brandmor I.", ["Ilka Brandmoor"]],
      ["ilka b", ["Ilka Brandmoor"]],
      ["Kofi", ["Kofi Anstruther"]],
      ["Kofi A.", ["Kofi Anstruther"]],
      ["K. Anstruther", ["Kofi Anstruther"]],
      ["Oona", ["Oona Petrakell"]],
      ["I. Brandmoor", ["Ilka Brandmoor"]],
    ],
  );
  expect(new Set(records.map(({ athlete }) => athlete)).has("Ilka Brandmoor")).toBe(false);
});

test("nothing is merged without an answer; an answer is not asked again; two athletes stay two", () => {
  const rows = [{ athlete: "Kofi A." }, { athlete: "Wren" }];
  expect(withNames(rows, { same: [], different: [] })).toEqual(rows);
  const answers = {
    same: [{ written: "kofi a.", athlete: "Kofi Anstruther" }],
    different: [{ written: "Wren", athlete: "Wren Castellow" }],
  };
  expect(withNames(rows, answers)).toEqual([{ athlete: "Kofi Anstruther" }, { athlete: "Wren" }]);
  expect(proposeNames(rows, squad, answers)).toEqual([]);
  const options = { names: answers };
  const cells = [
    ["Date", "Athlete", "Exercise", "Load"],
    ["2026-05-12", "Kofi A.", "squat", 105],
  ];
  expect(understandTable("Sets", cells, options).reading.records[0]?.athlete).toBe(
    "Kofi Anstruther",
  );
});

test("without an Athletes table the fullest spelling stands for the athlete", () => {
  const rows = ["Ilka", "I. Brandmoor", "Ilka Brandmoor", "Ilka Brandmoor"].map((athlete) => ({
    athlete,
  }));
  expect(proposeNames(rows, []).map(({ written }) => written)).toEqual(["Ilka", "I. Brandmoor"]);
});

test("names the Athletes table does not know are told with those they may mean", () => {
  const athletes = squad.map((athlete) => ({ athlete }));
  const rows = [
    "Ilka Brandmoor",
    "ilka  brandmoor",
    "Kofi Anstrather",
    "Kofi Anstrather",
    "Nobody Else",
  ].map((athlete, at) => ({ row: at + 2, athlete }));
  expect(checkNames(rows, athletes)).toEqual([
    { name: "Kofi Anstrather", firstRow: 4, rows: 2, near: ["Kofi Anstruther"] },
    { name: "Nobody Else", firstRow: 6, rows: 1, near: [] },
  ]);
  expect(
    nameIssues("Sets", rows, athletes).map(({ code, row, facts }) => [code, row, facts.near]),
  ).toEqual([
    ["unknown-athlete", 4, "Kofi Anstruther"],
    ["unknown-athlete", 6, ""],
  ]);
});
