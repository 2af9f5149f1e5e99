import { slidFormula } from "../../../src/local-host/files/xlsx/slid-formula";

// ECMA-376 part 1, 18.3.1.40: a shared formula's relative references move with the cell.
test.each([
  ["A1*$B$1+C$1+$D1", "B3*$B$1+D$1+$D3"],
  ["SUM(A1:B2)", "SUM(B3:C4)"],
  ["SUM(A:A,$C:C,2:2,$3:3)", "SUM(B:B,$C:D,4:4,$3:5)"],
  ["Sets!A1&'Q1 2026'!B1", "Sets!B3&'Q1 2026'!C3"],
  ['IF(A1="S1","B2",LOG10(A1))', 'IF(B3="S1","B2",LOG10(B3))'],
  ["Table1[W1]+Table1[[#This Row],[W1]]+A1", "Table1[W1]+Table1[[#This Row],[W1]]+B3"],
  ["1.5E3+AB12", "1.5E3+AC14"],
  ["load_1+XYZ9999999+T_A1", "load_1+XYZ9999999+T_A1"],
])("%s filled two down and one to the right is %s", (formula, slid) => {
  expect(slidFormula(formula, 2, 1)).toBe(slid);
});

test("a reference that would leave the tab is #REF!", () => {
  expect(slidFormula("A1+C3", -2, -1)).toBe("#REF!+B1");
  expect(slidFormula("XFD1+A1048576", 1, 1)).toBe("#REF!+#REF!");
});
