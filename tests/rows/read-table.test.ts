import { understandTable } from "../../src/rows/read-table";
import { counts, today } from "./layouts/short";

type Row = readonly unknown[];
const sets = (...cells: readonly Row[]) => understandTable("Sets", cells, { today });

test("a lift that no column names may stand above the rows: it is asked for, with some of them", () => {
  const { layout, reading, tabQuestions } = sets(
    ["Date", "Athlete", "Set", "Load", "Speed"],
    ["2026-05-12", "Ilka", 1, 80, 0.6],
    ["2026-05-13", "Ilka", 2, 80, 0.6],
  );
  expect(layout).toBe("blocks one under another");
  expect(counts(reading)).toEqual([0, 2, 0, 1]);
  expect(tabQuestions).toMatchObject([
    {
      about: "exercise",
      samples: ["2026-05-12 · Ilka · 1 · 80", "2026-05-13 · Ilka · 2 · 80"],
    },
  ]);
});

test("a date whose order is open is asked about with dates of its column, not with its heading", () => {
  const { questions } = sets(
    ["Ilka", "", "", "", ""],
    ["Date", "Exercise", "Set", "Load", "Speed"],
    ["5/6/2026", "squat", 1, 80, 0.6],
    ["6/7/2026", "squat", 2, 80, 0.6],
  );
  expect(questions).toMatchObject([
    { column: 1, about: "date order", samples: ["5/6/2026", "6/7/2026"] },
  ]);
});

test("without a header there are no columns and none is asked about; of plain rows nothing is asked of the whole tab", () => {
  const { columns, questions } = sets(["Weather"], ["rain"]);
  expect([columns, questions]).toEqual([[], []]);
  expect(
    sets(["Date", "Athlete", "Exercise", "Load"], ["2026-05-12", "Ilka", "squat", 80]).tabQuestions,
  ).toEqual([]);
});
