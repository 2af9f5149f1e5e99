import { readTable } from "../../src/rows/read-table";
import { sayRowIssue } from "../../src/words/row-issues";

const privateOf = (cell: unknown, heading = "Private?") => {
  const cells = [
    ["Date", "Athlete", "Note", heading],
    ["2026-05-19", "Priya Tellander", "exam", cell],
  ];
  return readTable("Diary", cells).records[0]!.private;
};

test.each(["y", "yes", "Ja", true, 1, "✓"])("“%s” keeps a row private", (cell) => {
  expect(privateOf(cell)).toBe(true);
});

test.each(["", "n", "no", false, 0, "–", null])("“%s” does not", (cell) => {
  expect(privateOf(cell)).toBe(false);
});

test.each(["x", "coach only", "privat", "?!", 2])(
  "“%s” is neither yes nor no: the row stays private, and the cell is asked about",
  (cell) => {
    expect(privateOf(cell)).toBe(true);
    const cells = [
      ["Date", "Athlete", "Note", "Private?"],
      ["2026-05-19", "Priya Tellander", "exam", cell],
    ];
    const { issues } = readTable("Diary", cells);
    expect(issues.map(({ code, cell: at }) => [code, at])).toEqual([["not-yes-or-no", "D2"]]);
    expect(sayRowIssue(issues[0]!).whyItMatters).toBe(
      "The row stays private until this is settled.",
    );
  },
);

test("a diary without such a column has no private rows", () => {
  expect(privateOf("x", "Shoes")).toBe(false);
});
