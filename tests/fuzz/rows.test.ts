import fc from "fast-check";
import { catalogue } from "../../src/catalogue";
import { understandTable } from "../../src/rows/read-table";
import { checkCall, formulasAnswer } from "./formulas-property";
import { rowsAreAccountedFor } from "./rows-property";
import { checkReading } from "./sound-reading";

test("five hundred random and spoilt tables: no crash, every row counted once, every figure a number", () => {
  fc.assert(rowsAreAccountedFor, { numRuns: 500 });
});

test("the check itself sees a lost row, a figure that is none, and a wrong address", () => {
  const table = [
    ["Date", "Athlete", "Exercise", "Load"],
    ["2026-05-12", "Ilka", "squat", 820],
  ];
  const { reading } = understandTable("Sets", table);
  expect(() => checkReading(table, reading)).not.toThrow();
  expect(() => checkReading(table, { ...reading, rowsRead: 0 })).toThrow("add up");
  expect(() => checkReading(table, { ...reading, records: [{ loadKg: Number.NaN }] })).toThrow(
    "loadKg",
  );
  const [issue] = reading.issues;
  expect(() => checkReading(table, { ...reading, issues: [{ ...issue!, cell: "A1" }] })).toThrow(
    "A1",
  );
  const said = { ...reading, issues: [{ ...issue!, found: "undefined" }] };
  expect(() => checkReading(table, said)).toThrow("said: “undefined”");
  expect(() => checkReading([...table, [undefined]], { ...said, rowsBlank: 1 })).not.toThrow();
});

test("three hundred calls of formulas with random and spoilt tables: figures or sentences", () => {
  fc.assert(formulasAnswer, { numRuns: 300 });
});

test("the check itself sees a crash, a figure that is none and a blank answer", () => {
  const formula = (compute: () => unknown) => ({ ...catalogue[0]!, compute });
  expect(() =>
    checkCall(
      formula(() => (undefined as never as string[]).length),
      [],
    ),
  ).toThrow("crashed");
  expect(() =>
    checkCall(
      formula(() => [[1, Number.NaN]]),
      [],
    ),
  ).toThrow("gives NaN");
  expect(() =>
    checkCall(
      formula(() => [[1], [1, 2]]),
      [],
    ),
  ).toThrow("different widths");
  expect(() =>
    checkCall(
      formula(() => "usual undefined"),
      [],
    ),
  ).toThrow("says undefined");
  expect(() =>
    checkCall(
      formula(() => []),
      [],
    ),
  ).toThrow("no row");
});
