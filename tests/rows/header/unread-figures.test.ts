import type { ColumnQuestion } from "../../../src/rows/header/decide-columns";
import { unreadFigures } from "../../../src/rows/header/unread-figures";
import type { Understanding } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";

const question = (over: Partial<ColumnQuestion> = {}): ColumnQuestion => ({
  column: 4,
  heading: "Colour",
  about: "meaning",
  samples: ["1", "2", "3"],
  guess: null,
  choices: [],
  ...over,
});
const told = (
  questions: readonly ColumnQuestion[],
  headerRow = 2,
  issues: readonly { code: string; column: number }[] = [],
) =>
  unreadFigures("Sets", {
    headerRow,
    questions,
    reading: { issues },
  } as unknown as Understanding<TableName>).map(({ code, cell, found, facts }) => [
    code,
    cell,
    found,
    facts,
  ]);

test("a column of figures without a known heading is told at its heading, with what it may be", () => {
  expect(told([question()])).toEqual([["figures-unread", "D2", "Colour", {}]]);
  expect(told([question({ column: 7, guess: "movedWell" })], 1)).toEqual([
    ["figures-unread", "G1", "Colour", { guess: "movement ok" }],
  ]);
});

test("words are nobody's business, nor is a question of unit, or a table without a header", () => {
  expect(told([question({ samples: ["red", "blue", "3"] })])).toEqual([]);
  expect(told([question({ samples: ["red", "2"] })])).toEqual([]);
  expect(told([question({ samples: ["red", "2", "3"] })])).toHaveLength(1);
  expect(told([question({ about: "unit" })])).toEqual([]);
  expect(told([question()], 0)).toEqual([]);
});

test("a column already told as a heading unknown is not told again, another is", () => {
  const columns = [question(), question({ column: 5, heading: "Shade" })];
  expect(
    told(columns, 2, [{ code: "heading-unknown", column: 4 }]).map(([, cell]) => cell),
  ).toEqual(["E2"]);
  expect(told(columns, 2, [{ code: "not-a-number", column: 4 }])).toHaveLength(2);
});
