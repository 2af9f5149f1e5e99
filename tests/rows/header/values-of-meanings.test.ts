import { massUnitOf } from "../../../src/rows/header/answered-mass-unit";
import { contradictedColumns } from "../../../src/rows/header/contradicted-columns";
import { recogniseHeader } from "../../../src/rows/header/recognise-header";
import { bestFit, sampleColumn, threeSamples, valueFit } from "../../../src/rows/header/value-fit";

test.each([
  ["load", [15, "200", "82,5"], [14.9, 200.1, "x", null]],
  [
    "speed",
    [0.2, 1.7, "0.11 2.49", "0,62/0,6"],
    [0.19, 1.71, 1, "0.1 0.6", "2.5 0.6", "", "0.6 x"],
  ],
  ["set", [1, 12, "3"], [0, 13, 1.5, "a"]],
  ["reps", [1, 20], [0, 21, 2.5]],
  ["height", [10, 90], [9.9, 90.1]],
  ["contact", [0.12, 0.4, 120, 400], [0.11, 0.41, 119, 401]],
  ["flight", [0.3, 0.75, 300, 750], [0.29, 0.76, 299, 751]],
  ["movedWell", ["y", 0, false], ["x", 3]],
  ["sleepH", [3, 12, "7,5"], [2.9, 12.1, "7:30"]],
  ["athlete", ["Ilka", "Mo"], ["I", "I K", "12 May", 5, true, new Date(2026, 4, 1)]],
  ["exercise", ["squat"], ["12 May", 5]],
  ["test", ["hop"], [5]],
  ["race", ["mile"], [5]],
  ["day", [new Date(2026, 4, 1), "12 May", "2026-05-12"], [46_154, "squat", ""]],
  ["from", ["12/5"], [5]],
  ["until", ["12/5"], [5]],
  ["note", ["anything", 5, null], []],
])("what looks like “%s”: %j, and what does not: %j", (field, like, unlike) => {
  for (const cell of like) expect([cell, valueFit(field, [cell])]).toEqual([cell, 1]);
  for (const cell of unlike) expect([cell, valueFit(field, [cell])]).toEqual([cell, 0]);
});

test("the share of a column that fits, and everything where there is nothing to go by", () => {
  expect(valueFit("load", [60, 65, 5, "x"])).toBe(0.5);
  expect(valueFit("load", [])).toBe(1);
});

test("the best of several meanings fits nine in ten of three cells or more; of equals the first", () => {
  const ten = [60, 60, 60, 60, 60, 60, 60, 60, 60, 5];
  expect(bestFit(["note", "load"], ten)).toEqual({ field: "load", fit: 0.9 });
  expect(bestFit(["load"], [...ten.slice(1)])).toBeNull();
  expect(bestFit(["load"], [60, 60])).toBeNull();
  expect(bestFit(["height", "load"], [60, 60, 60])!.field).toBe("height");
  expect(bestFit(["height", "load"], [...Array(9).fill(60), 95])).toEqual({
    field: "load",
    fit: 1,
  });
  expect(bestFit(["note"], ten)).toBeNull();
});

test("a sample is 200 filled cells of the first thousand rows, blanks and empty boxes left out", () => {
  const column = (cells: readonly unknown[]) => cells.map((cell) => ["x", cell]);
  const numbers = Array.from({ length: 300 }, (_, at) => at);
  expect(sampleColumn(column(numbers), 1, 300, 1)).toEqual(numbers.slice(1, 201));
  expect(sampleColumn(column(numbers), 0, 3, 1)).toEqual([0, 1, 2]);
  expect(sampleColumn(column(["", false, null, " ", 0, true]), 0, 6, 1)).toEqual([0, true]);
  const late = (at: number) => column([...Array(at).fill(""), 7]);
  expect(sampleColumn(late(999), 0, 1001, 1)).toEqual([7]);
  expect(sampleColumn(late(1000), 0, 1001, 1)).toEqual([]);
  expect(sampleColumn(late(1000), 1, 1001, 1)).toEqual([7]);
  expect(sampleColumn([], 0, 3, 1)).toEqual([]);
});

test("three different values stand for a column", () => {
  expect(threeSamples([1, 1, "1", 2, null, 3, 4])).toEqual(["1", "2", ""]);
  expect(threeSamples(["a"])).toEqual(["a"]);
});

test("a heading is contradicted by five values or more of which hardly one bears it out", () => {
  const fields = recogniseHeader("Sets", ["Load", "Speed", "Note"]).fields;
  const against = (rows: readonly (readonly unknown[])[]) =>
    contradictedColumns(rows, 0, rows.length, fields).map(({ field, guess }) => [field, guess]);
  const swapped = Array<unknown[]>(5).fill([0.62, 65, "x"]);
  expect(against(swapped)).toEqual([
    ["load", "speed"],
    ["speed", "load"],
  ]);
  expect(against(swapped.slice(1))).toEqual([]);
  expect(against(Array(5).fill([0.62, 0.62, ""]))).toEqual([["load", null]]);
  expect(against([...Array(9).fill([0.62, 0.62, ""]), [60, 0.62, ""]])).toEqual([]);
  expect(against([...Array(10).fill([0.62, 0.62, ""]), [60, 0.62, ""]])).toEqual([["load", null]]);
});

test("the mass named for any column holds, another unit does not", () => {
  const unit = (...units: (string | undefined)[]) =>
    massUnitOf({
      columns: units.map((one, at) => ({
        column: at + 1,
        ...(one === undefined ? {} : { unit: one }),
      })),
    })?.name;
  expect(unit("cm", undefined, "lb", "kg")).toBe("lb");
  expect(unit("cm", "stone")).toBeUndefined();
  expect(massUnitOf(null)).toBeNull();
});
