import { plain } from "./bare/plain";
import { Database } from "./database";
import { figureNames, furthestApart } from "./figures";
import { byHandAsPrinted, formulas } from "./product";
import { setRows } from "./set-rows";

// Of this squad one athlete does not hold: what SEASON_HOLD prints then runs from the change.
const rows = setRows(12_000);

test.each(figureNames)(
  "%s: every figure the formula prints is that of a hand-written pass to 1e-9",
  (figure) => {
    const { handed, run, figures } = formulas[figure];
    const printed = run(handed(rows), rows);
    const found = figures(printed);
    expect(found).toHaveLength(figure === "loss" ? 12_000 : rows.athletes.length);
    if (figure === "hold") expect(printed.filter(([word]) => word !== "holding")).toHaveLength(1);
    expect(furthestApart(found, byHandAsPrinted[figure](rows, printed))).toBeLessThan(1e-9);
  },
);

test.each(figureNames)("%s: the plain figure is the database's to 1e-9", async (figure) => {
  const database = await Database.open();
  await database.load(rows, figure);
  const found = await database.figures(figure);
  expect(furthestApart(found, plain[figure](rows))).toBeLessThan(1e-9);
});

test("lists of other rows, or with a figure that is none, never agree", () => {
  expect(furthestApart([1, 2], [1])).toBeGreaterThan(1);
  expect(furthestApart([Number.NaN, 2], [1, 2])).toBeGreaterThan(1);
  expect(furthestApart([1, 2.5], [1, 2])).toBe(0.5);
});
