import { catalogue } from "../../src/catalogue";
import { givenTables } from "../../src/catalogue/arguments/given-tables";
import { tableArgument } from "../../src/catalogue/arguments/table-argument";
import {
  droppedRowsOf,
  sentences,
  unusedRows,
  withUnused,
} from "../../src/catalogue/arguments/unused-rows";
import { exampleDiary, exampleJumps, exampleSets } from "../../src/catalogue/example-rows";
import { dayFromIso } from "../../src/coaching/calendar/day";
import type { TableName } from "../../src/rows/table-name";

const asOf = "2026-05-21";
const day = dayFromIso(asOf)!;
const argument = <T extends TableName>(table: T, cells: readonly unknown[]) => {
  const read = tableArgument(table, table.toLowerCase(), cells, day);
  if (!read.ok) throw new Error(read.refusal.code);
  return read.value;
};

test("loads whose unit is in doubt are told beside every athlete asked about", () => {
  const rows = [185, 225, 245, 275, 315].map((load) => ["2026-05-12", "Ilka", "squat", load, 0.6]);
  const sets = argument("Sets", [["Date", "Athlete", "Exercise", "Load", "Speed"], ...rows]);
  const unused = unusedRows([sets]);
  expect(["Ilka", "Kofi", ""].map(unused.of)).toEqual([1, 1, 0]);
  expect(unused.beside(["Ilka"])).toBe(0);
});

test("a row is counted once however many of its cells are not used, with the athlete it names", () => {
  const sets = argument("Sets", [
    ...exampleSets,
    ["2026-05-21", "Ilka Brandmoor", "back squat", "?", "sixty", "fast"],
    ["2026-05-21", "ilka  brandmoor", "back squat", 4, 60, "fast"],
    ["2026-05-21", 12, "back squat", 5, 60, "fast"],
  ]);
  const unused = unusedRows([sets]);
  expect(unused.of("Ilka Brandmoor")).toBe(2);
  expect(unused.of("Tomas Reyerson")).toBe(0);
  expect(unused.beside(["Ilka Brandmoor"])).toBe(1);
  // A row that names nobody stays beside every list, and belongs to no blank cell of it.
  expect([unused.of(""), unused.beside(["", "Ilka Brandmoor"])]).toEqual([0, 1]);
  expect(unused.beside(["Tomas Reyerson"])).toBe(3);
});

test("rows of a table that has no athletes are beside every list", () => {
  const plates = argument("Plates", [
    ["mass kg", "thickness cm"],
    [15, 3.8],
    [5, "thin"],
  ]);
  const unused = unusedRows([plates]);
  expect(plates.reading.issues).toHaveLength(1);
  expect(unused.beside(["Ilka Brandmoor"])).toBe(1);
  expect(droppedRowsOf(plates, "Ilka Brandmoor")).toBe(0);
});

test("only rows left out whole count as dropped, and only those of the athlete", () => {
  const jumps = argument("Jumps", [
    ...exampleJumps,
    ["some day", "Ilka Brandmoor", "box jump", 40],
    ["some day", "Ilka Brandmoor", "box jump", 41],
    ["some day", "Tomas Reyerson", "box jump", 41],
    ["some day", 7, "box jump", 41],
  ]);
  expect(droppedRowsOf(jumps, "ilka brandmoor")).toBe(2);
  expect(droppedRowsOf(jumps, "Wren Castellow")).toBe(0);
});

test("what stands before decides how rows not used are joined to it", () => {
  expect(withUnused("holding", 0)).toBe("holding");
  expect(withUnused("", 2)).toBe("2 rows with a cell not used (see ROW_CHECK)");
  expect(withUnused("3 days", 1)).toBe("3 days; 1 row with a cell not used (see ROW_CHECK)");
  expect(withUnused("Look again.", 1)).toBe(
    "Look again. Also 1 row with a cell not used (see ROW_CHECK).",
  );
  expect(withUnused("Is this Ilka B?", 1)).toBe(
    "Is this Ilka B? Also 1 row with a cell not used (see ROW_CHECK).",
  );
});

test("a reason is closed before its notes, and not closed twice or for nothing", () => {
  expect(sentences("−4 % from baseline", [])).toBe("−4 % from baseline");
  expect(sentences("−4 % from baseline", ["New bar."])).toBe("−4 % from baseline. New bar.");
  expect(sentences("Nothing moved.", ["New bar.", "New gym."])).toBe(
    "Nothing moved. New bar. New gym.",
  );
  expect(sentences("Is this Ilka B?", ["New bar."])).toBe("Is this Ilka B? New bar.");
});

test("a name written two ways is one athlete, under the way it was first written", () => {
  const given = givenTables(
    {
      Sets: [...exampleSets, ["2026-05-19", "ilka  BRANDMOOR", "back squat", 3, 60, 0.7]],
      Runs: [
        ["date", "athlete", "minutes", "exertion"],
        ["2026-05-30", "Wren Castellow", 40, 5],
      ],
    },
    ["Sets"],
    day,
  );
  // Wren's only run is after the day asked about.
  expect([...given.namesUpTo(day).values()]).toEqual(["Tomas Reyerson", "Ilka Brandmoor"]);
  expect([...given.namesUpTo(day + 9).values()]).toContain("Wren Castellow");
  expect(given.lookedIn).toBe("Sets or Runs");
  expect(given.dropped("Availability", "Ilka Brandmoor")).toBe(0);
});

test("a day's rows not used are said once, in the athlete's first row", () => {
  const unusual = catalogue.find(({ name }) => name === "UNUSUAL_DAYS")!;
  const slow = exampleSets.map((row) =>
    row[0] === "2026-05-14" && row[1] === "Ilka Brandmoor"
      ? [...row.slice(0, 5), Number(row[5]) - 0.12]
      : row,
  );
  const sets = [...slow, ["2026-05-21", "Ilka Brandmoor", "back squat", 3, 60, 62]];
  const rows = unusual.compute(["Ilka Brandmoor", sets, "", "", "", "", asOf]) as unknown[][];
  expect(rows.map((row) => row[1])).toEqual(["2026-05-07", "2026-05-14"]);
  expect(rows.map((row) => /1 row with a cell not used/.test(String(row[4])))).toEqual([
    true,
    false,
  ]);
});

test("rows that name nobody are told once, also beside a refusal, and no row of a table without athletes is one", () => {
  const call = (name: string, ...args: unknown[]) =>
    catalogue.find((one) => one.name === name)!.compute(args) as unknown[][];
  const sets = [...exampleSets, ["2026-05-19", "", "back squat", 1, 60, 0.7]];
  const said = "1 row that names nobody not used (see ROW_CHECK)";
  const hold = (athletes: unknown, rows = sets) =>
    call("SEASON_HOLD", athletes, rows, exampleJumps, asOf).map((row) => String(row.at(-1)));
  expect(hold("Ilka Brandmoor")[0]).toMatch(new RegExp(`; ${said.replace(/[()]/g, "\\$&")}$`));
  const [first, second] = hold([[""], ["Tomas Reyerson"], ["Ilka Brandmoor"]]).slice(1);
  expect([first!.includes(said), second!.includes(said)]).toEqual([true, false]);
  expect(hold("Ilka Brandmoor", [...exampleSets])[0]).not.toContain("nobody");
  expect(() => call("EXPECTED_SPEED", "Ilka Brandmoor", 60, sets, "deadlift", asOf)).toThrow(
    `no deadlift set with a speed and a load up to that day. Also ${said}`,
  );
  const plates = argument("Plates", [
    ["mass kg", "thickness cm"],
    [15, 3.8],
    ["", 2],
  ]);
  expect(unusedRows([plates]).shared).toEqual({ nameless: 0, ofTable: new Map([["Plates", 1]]) });
});

test("rules and plates that cannot be used are told once, as they bear on every athlete", () => {
  const call = (name: string, ...args: unknown[]) =>
    (catalogue.find((one) => one.name === name)!.compute(args) as unknown[][]).map((row) =>
      String(row.at(-1)),
    );
  const rules = [
    ["rule", "value"],
    ["Minimum speed", 0.35],
    ["False flags, share of calm seasons", "one in five"],
  ];
  const plates = [
    ["mass kg", "thickness cm"],
    [15, "thin"],
  ];
  const two = [["Tomas Reyerson"], ["Ilka Brandmoor"]];
  const said = "2 rows of Rules with a cell not used (see ROW_CHECK)";
  for (const rows of [
    call("SEASON_HOLD", two, exampleSets, exampleJumps, asOf, "", rules),
    call("JUMP_TREND", two, exampleJumps, "box jump", asOf, "", rules),
    call("STRENGTH_ESTIMATE", two, exampleSets, "back squat", asOf, rules),
    call("READINESS", two, exampleSets, exampleJumps, "", asOf, "", rules),
  ]) {
    expect(rows.map((words) => words.includes(said))).toEqual([true, false]);
  }
  expect(call("SEASON_HOLD", two, exampleSets, exampleJumps, asOf, plates, rules)[0]).toContain(
    "1 row of Plates with a cell not used, 2 rows of Rules with a cell not used (see ROW_CHECK)",
  );
});

test("days and what differed tell rows that name nobody once, also beside a refusal", () => {
  const call = (name: string, ...args: unknown[]) =>
    catalogue.find((one) => one.name === name)!.compute(args) as unknown[][];
  const sets = [...exampleSets, ["2026-05-19", "", "back squat", 1, 60, 0.7]];
  const said = /1 row that names nobody not used \(see ROW_CHECK\)[.]?$/;
  const two = [["Tomas Reyerson"], ["Ilka Brandmoor"]];
  for (const rows of [
    call("UNUSUAL_DAYS", two, sets, "", exampleDiary, "", "", asOf),
    call("WHAT_DIFFERED", two, sets, "", exampleDiary, "", asOf),
  ]) {
    expect(rows.map((row) => said.test(String(row.at(-1)))).indexOf(true)).toBe(0);
    expect(rows.filter((row) => said.test(String(row.at(-1))))).toHaveLength(1);
  }
  const nobody = call(
    "UNUSUAL_DAYS",
    [["Wren Castellow"], ["Ilka Brandmoor"]],
    sets,
    "",
    "",
    "",
    "",
    asOf,
  );
  expect(nobody[0]![1]).toMatch(
    /^No row of Wren Castellow.* Also 1 row that names nobody not used/,
  );
  expect(() => call("UNUSUAL_DAYS", "Wren Castellow", sets, "", "", "", "", asOf)).toThrow(
    "Also 1 row that names nobody not used (see ROW_CHECK)",
  );
});

test("a name like one in the rows is asked about in a sentence of its own, and so are rows that name nobody", () => {
  const speeds = catalogue.find(({ name }) => name === "LOAD_SPEED_LINE")!;
  const sets = [...exampleSets, ["2026-05-19", "", "back squat", 1, 60, 0.7]];
  expect(() => speeds.compute(["Ilka Brandmor", sets, "back squat", asOf])).toThrow(
    /: is this Ilka Brandmoor\? Also 1 row that names nobody not used \(see ROW_CHECK\)\.$/,
  );
});

test("rows that cannot be used are told where nothing is left to answer from", () => {
  const call = (name: string, ...args: unknown[]) =>
    catalogue.find((one) => one.name === name)!.compute(args) as unknown[][];
  // Days as bare serial numbers, as a column loses its format.
  const serial = exampleSets.map((row, at) =>
    at === 0 || row[1] === "Tomas Reyerson" ? row : [46084 + at, ...row.slice(1)],
  );
  const said =
    "No row of Ilka Brandmoor in Sets up to that day: check the spelling and the date. Also 28 rows with a cell not used (see ROW_CHECK).";
  const lift = [serial, "back squat", asOf];
  expect(() => call("LOAD_SPEED_LINE", "Ilka Brandmoor", ...lift)).toThrow(said);
  const two = [["Ilka Brandmoor"], ["Wren Castellow"]];
  const [ilka, wren] = call("LOAD_SPEED_LINE", two, ...lift);
  expect(ilka![0]).toBe(said);
  expect(wren![0]).not.toContain("ROW_CHECK");
  const days = [serial, "", "", "", "", asOf];
  expect(() => call("UNUSUAL_DAYS", "Ilka Brandmoor", ...days)).toThrow(/Also 28 rows/);
  expect(call("UNUSUAL_DAYS", two, ...days)[0]![1]).toMatch(/Also 28 rows/);
});
