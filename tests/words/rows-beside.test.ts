import { rowsBesideWords } from "../../src/words/squad-table";

test("one row belongs to nobody, several belong to nobody", () => {
  expect([1, 3].map(rowsBesideWords)).toEqual([
    "1 row with a cell not used belongs to nobody in this list.",
    "3 rows with a cell not used belong to nobody in this list.",
  ]);
});
