import { opened } from "../local-host/opened";

jest.setTimeout(120_000);

/** Cells of a column where each names the one above it, and the first the last. */
const circle = (length: number) => [
  [`=A${length}+1`],
  ...Array.from({ length: length - 1 }, (_, at) => [`=A${at + 1}+1`]),
];

test("a formula of ours that is given its own cell is refused in a sentence, wherever it stands in the range", async () => {
  const host = await opened({
    Sets: [
      ["Athlete", "Load", "=TOTAL(A1:C3)"],
      ["Tomas Reyerson", 70, "=TOTAL(A:C)"],
      ["Oona Petrakell", 60, "=TOTAL(B2:B3)"],
    ],
    Other: [["=TOTAL(Sets!A1:B3)"]],
  });
  const { tab, values, sentenceAt } = host;
  expect(values("Sets").map((row) => row[2])).toEqual(["#ERROR!", "#ERROR!", 130]);
  expect(values("Other")).toEqual([[130]]);
  const id = host.engine.book.getSheetByName("Sets")!.getSheetId();
  expect(sentenceAt(id, 0, 2)).toMatch(/^The formula stands in a range that it is given/);
  // Given a range without its cell, it answers.
  tab("Sets").getRange("C1").setFormula("=TOTAL(B2:B3)");
  await host.settled();
  expect(values("Sets")[0]![2]).toBe(130);
});

test.each([
  ["a cell that names itself", [["=A1"]]],
  ["two cells that name each other", [["=B1", "=A1"]]],
  ["our formulas that name each other", [["=ECHO(B1)", "=ECHO(A1)"]]],
  ["a sum over its own column", [["=SUM(A:A)"], [1], [2]]],
  ["a circle of 3,000 cells", circle(3000)],
  ["a circle through an array's result", [["=COUNT_TO(C1,1)", "", "=ROWS(A1:A5)"]]],
])("%s: calculating ends, and every cell holds a value or an error", async (_, rows) => {
  // Without an end the host would say so after two minutes, past this test's own patience.
  const host = await opened({
    Sets: rows.map((row) => row.map((one) => (one === "" ? null : one))),
  });
  for (const value of host.values("Sets").flat()) {
    expect(["string", "number"]).toContain(typeof value);
    if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  }
  // The workbook is still worked with: a cell beside the circle is calculated.
  host.write("Sets", "H1", [["=2+3"]]);
  await host.settled();
  expect(host.values("Sets")[0]![7]).toBe(5);
});
