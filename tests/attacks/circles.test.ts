import { opened } from "../local-host/opened";

/** Cells of a column where each names the one above it, and the first the last. */
const circle = (length: number) => [
  [`=A${length}+1`],
  ...Array.from({ length: length - 1 }, (_, at) => [`=A${at + 1}+1`]),
];

test("a formula that is given its own cell is refused in a sentence, wherever it stands in the range", async () => {
  const host = await opened({
    Sets: [
      ["Athlete", "Load", "=TOTAL(A1:C3)"],
      ["Tomas Reyerson", 70, "=TOTAL(A:C)"],
      ["Oona Petrakell", 60, "=TOTAL(B2:B3)"],
    ],
    Other: [["=TOTAL(Sets!A1:B3)"]],
  });
  const { tab, values, sentenceAt } = host;
  expect(values("Sets").map((row) => row[2])).toEqual(["#REF!", "#REF!", 130]);
  expect(values("Other")).toEqual([[130]]);
  const id = host.engine.book.getSheetByName("Sets")!.getSheetId();
  expect(sentenceAt(id, 0, 2)).toMatch(/^The formula stands in a range that it is given/);
  // Given a range without its cell, it answers.
  tab("Sets").getRange("C1").setFormula("=TOTAL(B2:B3)");
  await host.settled();
  expect(values("Sets")[0]![2]).toBe(130);
});

const circles: readonly (readonly [string, readonly (readonly unknown[])[], string])[] = [
  ["a cell that names itself", [["=A1"]], "The formula stands in a range"],
  ["two cells that name each other", [["=B1", "=A1"]], "This formula rests on its own result"],
  ["our formulas that name each other", [["=ECHO(B1)", "=ECHO(A1)"]], "This formula rests on"],
  ["a sum over its own column", [["=SUM(A:A)"], [1], [2]], "The formula stands in a range"],
  ["a circle of 3,000 cells", circle(3000), "This formula rests on its own result"],
];

test.each(circles)("%s: no figure is made up, and it is said why", async (_, rows, said) => {
  // Without an end the host would say so after two minutes, past this test's own patience.
  const host = await opened({ Sets: rows });
  const id = host.engine.book.getSheetByName("Sets")!.getSheetId();
  rows.forEach((line, row) => {
    line.forEach((cell, column) => {
      if (typeof cell !== "string") return;
      expect(host.values("Sets")[row]![column]).toBe("#REF!");
      expect(host.sentenceAt(id, row, column)).toMatch(said);
    });
  });
  // The workbook is still worked with: a cell beside the circle is calculated.
  host.write("Sets", "H1", [["=2+3"]]);
  await host.settled();
  expect(host.values("Sets")[0]![7]).toBe(5);
});

test("what rests on a circle is an error, what does not is calculated, and one change mends them all", async () => {
  const host = await opened({
    Sets: [
      ["=B1+1", "=C1+1", "=A1+1", "=C1*2", "=ECHO(C1)", "=F2+1"],
      [null, null, null, null, null, 4],
    ],
  });
  const id = host.engine.book.getSheetByName("Sets")!.getSheetId();
  expect(host.values("Sets")[0]).toEqual(["#REF!", "#REF!", "#REF!", "#REF!", "#REF!", 5]);
  expect(host.sentenceAt(id, 0, 3)).toBeUndefined();
  host.write("Sets", "B1", [[10]]);
  await host.settled();
  expect(host.values("Sets")[0]).toEqual([11, 10, 12, 24, 12, 5]);
  expect(host.sentenceAt(id, 0, 0)).toBeUndefined();
  // And a change makes one anew.
  host.write("Sets", "B1", [["=D1"]]);
  await host.settled();
  expect(host.values("Sets")[0]).toEqual(["#REF!", "#REF!", "#REF!", "#REF!", "#REF!", 5]);
  expect(host.sentenceAt(id, 0, 3)).toMatch(/^This formula rests on its own result/);
});

test("a cell of a tab that is not there is no cell of the formula's own tab: no circle is said", async () => {
  const host = await opened({
    Sets: [
      ["=Nowhere!A1", "=TOTAL('No where'!A1:C3)"],
      ["=Sets!B2", "=A2"],
    ],
  });
  const id = host.engine.book.getSheetByName("Sets")!.getSheetId();
  // The library's own error for a bare cell of no tab.
  expect(host.values("Sets")).toEqual([
    ["#VALUE!", "#REF!"],
    ["#REF!", "#REF!"],
  ]);
  expect([host.sentenceAt(id, 0, 0), host.sentenceAt(id, 0, 1)]).toEqual([undefined, undefined]);
  // Named with its tab, a circle is one.
  expect(host.sentenceAt(id, 1, 0)).toMatch(/^This formula rests on its own result/);
});

test("a circle through an array's result ends, every cell a figure or an error", async () => {
  const host = await opened({ Sets: [["=COUNT_TO(C1,1)", null, "=ROWS(A1:A5)"]] });
  for (const value of host.values("Sets").flat()) {
    expect(["string", "number"]).toContain(typeof value);
    if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  }
});
