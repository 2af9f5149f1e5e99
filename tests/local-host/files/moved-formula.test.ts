import { lineMove } from "../../../src/local-host/files/xlsx/line-move";
import { movedFormula, movedRange } from "../../../src/local-host/files/xlsx/moved-formula";

const lines = (text: string) => text.split("");
/** A row put in above the third. */
const rows = lineMove(lines("abcdef"), lines("abxcdef"));
/** The second column taken out. */
const columns = lineMove(lines("abcd"), lines("acd"));
const moves = new Map([
  ["Sets", { name: "Sets", rows, columns: null }],
  ["Old name", { name: "Coach's list", rows: null, columns }],
]);

test.each([
  ["A1+A3+$A$3", "A1+A4+$A$4"],
  ["SUM(A1:A6)+SUM(3:3)+SUM(A:A)", "SUM(A1:A7)+SUM(4:4)+SUM(A:A)"],
  ['IF(A3="A3","Sets!A3",LOG10(3))', 'IF(A4="A3","Sets!A3",LOG10(3))'],
  ["'Old name'!$A$1:$D$9", "'Coach''s list'!$A$1:$C$9"],
  ["'Old name'!B1", "'Coach''s list'!#REF!"],
  ["'Old name'!A:B", "'Coach''s list'!A:A"],
  ["Other!A3+Sets!A3", "Other!A3+Sets!A4"],
  ["Table1[A3]", "Table1[A3]"],
])("%s, read in the tab Sets, becomes %s", (formula, after) => {
  expect(movedFormula(formula, "Sets", moves)).toBe(after);
});

test("a range all of which was taken out is gone, one in part is what is left of it", () => {
  const gone = { rows: lineMove(lines("abcdef"), lines("af")), columns: null };
  expect(movedRange("A2:B5", gone)).toBeNull();
  expect(movedRange("A1:B5", gone)).toBe("A1:B1");
  expect(movedRange("$A$4:$B$6", gone)).toBe("$A$2:$B$2");
  expect(movedRange("A2:A1048576", gone)).toBe("A2:A1048576");
});
