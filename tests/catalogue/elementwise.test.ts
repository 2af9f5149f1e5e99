import { catalogue } from "../../src/catalogue";
import { rounded } from "./close-to";

const call = (name: string, ...args: unknown[]) =>
  rounded(catalogue.find((entry) => entry.name === name)!.compute(args));

test("a column of flight times over one landing height gives a column", () => {
  expect(call("FLIGHT_HEIGHT", [[0.5], ["500 ms"], ["0,5"]], 30)).toEqual([
    [47.4813],
    [47.4813],
    [47.4813],
  ]);
});

test("one bad cell is that row's sentence, its neighbours keep their figures", () => {
  expect(call("FLIGHT_HEIGHT", [[0.5], ["half"], [""], [0.5], [""]])).toEqual([
    [30.6458],
    ["flight_time is not a number (half): give one number."],
    [""],
    [30.6458],
  ]);
});

test("one cell without a figure throws its sentence", () => {
  expect(() => call("FLIGHT_HEIGHT", "")).toThrow("flight_time is blank");
  expect(() => call("FLIGHT_HEIGHT", 5200)).toThrow("A flight time of 5.2 s is not possible");
  expect(() => call("REACTIVE_STRENGTH", 36, new Date(2026, 4, 12))).toThrow(
    "contact_time is not a number (a date, 2026-05-12)",
  );
});

test("columns of different length are refused by name", () => {
  expect(() => call("REACTIVE_STRENGTH", [[36], [40], [41]], [[180], [190]])).toThrow(
    "contact_time has 2 rows and height has 3: give columns of the same length, or one cell.",
  );
});

test("a column two wide is refused by name", () => {
  expect(() => call("FLIGHT_HEIGHT", [[0.5, 0.6]])).toThrow("flight_time is more than one column");
});

test("velocity loss reads cells, a list in one cell, and decimal commas alike", () => {
  expect(call("VELOCITY_LOSS", [[0.62, 0.6, 0.57]])).toBe(0.0806452);
  expect(call("VELOCITY_LOSS", "0.62 0.60 0.57")).toBe(0.0806452);
  expect(call("VELOCITY_LOSS", "0,62 / 0,60 / 0,57")).toBe(0.0806452);
});

test("a speed typed without its point, a gap and a single repetition are refused", () => {
  expect(() => call("VELOCITY_LOSS", [[0.62, 60]])).toThrow("Repetition 2 has a speed of 60 m/s");
  expect(() => call("VELOCITY_LOSS", [[0.62, "", 0.6]])).toThrow("repetition 2 is missing");
  expect(() => call("VELOCITY_LOSS", 0.62)).toThrow("at least two repetitions; one was given");
  expect(() => call("VELOCITY_LOSS", "0.62 fast")).toThrow("Not a speed (0.62 fast)");
});

const plates = [
  ["mass kg", "thickness cm"],
  [15, 3.8],
  [5, 2.1],
];

test("a stack with a plate nobody measured is refused by place and mass", () => {
  expect(() => call("STACK_HEIGHT", "2x15+10", plates)).toThrow("Plate 3 of the stack is 10 kg");
  expect(call("STACK_HEIGHT", [["2x15"], ["5"], ["x"]], plates)).toEqual([
    [7.6],
    [2.1],
    [
      "The stack “x” cannot be read: write the plates from the bottom up as “5x15+5”, five of 15 kg and one of 5 kg.",
    ],
  ]);
});

test("plates without header row, of one cell, and another table in their place", () => {
  expect(() => call("STACK_HEIGHT", "5x15", plates.slice(1))).toThrow(
    "plates has no header row: give the Plates range with the row that names its columns (needed: mass, thickness).",
  );
  expect(() => call("STACK_HEIGHT", "5x15", 15)).toThrow("plates is one cell");
  expect(() => call("STACK_HEIGHT", "5x15", "")).toThrow("plates is blank");
  const jumps = [["date", "athlete", "test", "height cm"]];
  expect(() => call("STACK_HEIGHT", "5x15", jumps)).toThrow("plates reads like the Jumps table");
});

test("row check names the cell, and says when all is well", () => {
  const sheet = [
    ["date", "athlete", "test", "height cm"],
    ["2026-05-19", "Ilka Brandmoor", "box jump", "high"],
  ];
  expect(call("ROW_CHECK", sheet, "jumps")).toEqual([
    ["D2", "“high”", expect.stringContaining("number"), expect.any(String)],
  ]);
  const listed = call("ROW_CHECK", sheet, "jumps", [["Name"], ["Ilka Brandmore"]]) as unknown[][];
  expect(listed.map(([cell, , todo]) => [cell, todo])).toEqual([
    ["D2", expect.stringContaining("number")],
    ["B2", "Is this Ilka Brandmore? Answer under Rows, or correct the name."],
  ]);
  expect(() => call("ROW_CHECK", sheet, "Leaps")).toThrow(
    "table is not one the add-on knows (Leaps)",
  );
  expect(() => call("ROW_CHECK", sheet, "")).toThrow("table is blank");
  expect(() => call("ROW_CHECK", [["", ""]], "Jumps")).toThrow("rows is blank");
});
