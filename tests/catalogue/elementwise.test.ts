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
  // 52 hundredths of a second, and lengths in metres: a figure from them would look like one.
  expect(() => call("FLIGHT_HEIGHT", 52)).toThrow("A flight time of 0.052 s is not possible");
  // Taken for ms, it is told in them, as it was typed.
  expect(() => call("FLIGHT_HEIGHT", 5.5)).toThrow("A flight time of 5.5 ms is not possible");
  expect(() => call("FLIGHT_HEIGHT", 12.5, 30)).toThrow("A flight time of 12.5 ms is not possible");
  expect(() => call("REACTIVE_STRENGTH", 30, 18.5)).toThrow("A contact time of 18.5 ms is not");
  expect(() => call("FLIGHT_HEIGHT", 0.5, 0.99)).toThrow("A landing 0.99 cm from the take-off");
  expect(call("FLIGHT_HEIGHT", 0.5, -1)).toBeCloseTo(30.15, 2);
  expect(() => call("REACTIVE_STRENGTH", 0.36, 180)).toThrow("A height of 0.36 cm is not possible");
  expect(() => call("REACTIVE_STRENGTH", 36, new Date(2026, 4, 12))).toThrow(
    "contact_time is not a number (a date, 2026-05-12)",
  );
});

test("one flight time over a column of landings gives a column, a blank one is level", () => {
  // g·t²/8 + H/2 + H²/(2·g·t²) for t = 0.5 s: 30.6458 cm level, and 15 + 1.8355 cm more over 30 cm.
  expect(call("FLIGHT_HEIGHT", 0.5, [[0], [30], [""]])).toEqual([[30.6458], [47.4813], [30.6458]]);
  expect(() => call("FLIGHT_HEIGHT", 0.5, "high")).toThrow("landing_height is not a number (high)");
});

test("a blank row among results of several columns stays blank, a refused one says so", () => {
  const loads = [[70], [""], [70], ["heavy"]];
  const blocks = [["5x5"], [""], ["5x3"], ["5x5"]];
  const rows = call("NEXT_BLOCK", blocks, loads, "y", "y", "y", 100, 2.5) as unknown[][];
  expect(rows.map(([block]) => block)).toEqual([
    "3×5",
    "",
    "3×3",
    "load is not a number (heavy): give one number.",
  ]);
  expect(rows[1]).toEqual(["", "", ""]);
  expect(rows[3]).toEqual(["load is not a number (heavy): give one number.", "–", "–"]);
});

test("a blank or wordy first argument is named", () => {
  expect(() => call("LOAD_DROP", "", 0.7, 0.8, 2.5)).toThrow("planned_load is blank");
  expect(() => call("REACTIVE_STRENGTH", "high", 180)).toThrow("height is not a number (high)");
  expect(() => call("REPS_IN_RESERVE", "heavy", 5, 110)).toThrow("load is not a number (heavy)");
  expect(() => call("STACK_HEIGHT", "", plates)).toThrow("stack is blank");
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
  expect(() => call("VELOCITY_LOSS", 0.62)).toThrow(
    "at least two repetitions of a set, side by side or in one cell; one was given",
  );
  expect(() => call("VELOCITY_LOSS", "0.62 fast")).toThrow("Not a speed (0.62 fast)");
});

const plates = [
  ["mass kg", "thickness cm"],
  [15, 3.8],
  [5, 2.1],
];

test("a repetition marked as missed, with none after it, is not told to lie between others", () => {
  expect(() => call("VELOCITY_LOSS", [[0.66, 0.62, "x"]])).toThrow(
    /^The speed of repetition 3 is missing: fill it in, or leave it out\.$/,
  );
});

test("an open column with one value for all rows ends with its last filled row", () => {
  const open = [[0.79], [""], [0.84], [""], [""]];
  expect(call("LOAD_DROP", 85, open, 0.86, 2.5)).toEqual([[80], [""], [85]]);
  // Where the load stands in the row and the speed does not yet, the row says so.
  expect(call("LOAD_DROP", [[85], [80]], [[0.79], [""]], 0.86, 2.5)).toEqual([
    [80],
    ["speed is blank: point it at a filled cell, or type a value."],
  ]);
});

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
  const empty = [
    ["", ""],
    ["", " "],
  ];
  expect(() => call("STACK_HEIGHT", "5x15", empty)).toThrow(
    "plates is blank: give the Plates range",
  );
  const jumps = [["date", "athlete", "test", "height cm"]];
  expect(() => call("STACK_HEIGHT", "5x15", jumps)).toThrow("plates reads like the Jumps table");
  // The row is there, its thickness is not: 38 mm written as cm.
  expect(() =>
    call("STACK_HEIGHT", "15", [
      ["mass kg", "thickness cm"],
      [15, 38],
    ]),
  ).toThrow("Plate 1 of the stack is 15 kg, and no row of the Plates table gives it a thickness");
  // Runs have a date, an athlete and a start too; the table it fits best is named.
  const races = [
    ["date", "race", "athlete", "matters", "start time"],
    ["2026-05-09", "R2", "all", "A", "10:00"],
  ];
  expect(() => call("SQUAD_TABLE", "Ada", races, "", "", "", "", "2026-05-01")).toThrow(
    "availability reads like the Races table",
  );
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
    ["B2", "Is this Ilka Brandmore? Answer in the sidebar, under Rows, or correct the name."],
  ]);
  expect(() => call("ROW_CHECK", sheet, "Leaps")).toThrow(
    "table is not one the add-on knows (Leaps)",
  );
  expect(() => call("ROW_CHECK", sheet, "")).toThrow("table is blank");
  expect(() => call("ROW_CHECK", [["", ""]], "Jumps")).toThrow("rows is blank");
  expect(() => call("ROW_CHECK", "box jump", "Jumps")).toThrow(
    "rows is one cell: give the whole Jumps range",
  );
  expect(() => call("ROW_CHECK", sheet, "Jumps", "", "soon")).toThrow("as_of is not a date (soon)");
});

test("row check names a column of figures that no heading explains; words are a coach's own", () => {
  const sheet = (heading: string, ...cells: readonly unknown[]) => [
    ["date", "athlete", "test", "height cm", heading],
    ...cells.map((cell, at) => [`2026-05-1${at}`, "Ilka Brandmoor", "CMJ", 41, cell]),
  ];
  const left =
    "Head it as Holdline's own tabs do, or end its heading in “notes” to leave it alone.";
  const unused = "Nothing in this column is used: no heading says what it is.";
  expect(call("ROW_CHECK", sheet("Zq", 7, "8.5"), "Jumps")).toEqual([["E1", "“Zq”", left, unused]]);
  const sets = [
    ["date", "athlete", "exercise", "load", "Sped"],
    ...["odd", 62, 71].map((speed) => ["2026-05-12", "Ilka Brandmoor", "squat", 85, speed]),
  ];
  expect(call("ROW_CHECK", sets, "Sets")).toEqual([
    ["E1", "“Sped”", "Head it “rep speeds”, if that is what it holds.", unused],
  ]);
  const fine = [["all rows read", "", "", ""]];
  for (const one of [sheet("Zq", 7, "calm"), sheet("Zq notes", 7, 8), sheet("", "")])
    expect(call("ROW_CHECK", one, "Jumps")).toEqual(fine);
});

test("row check names the row where the whole row is meant", () => {
  const untitled = [
    ["date", "athlete", "height cm"],
    ["2026-05-19", "Ilka Brandmoor", 40],
  ];
  expect(call("ROW_CHECK", untitled, "Jumps")).toEqual([
    ["row 1", "no column for “test”", expect.any(String), "None of its rows can be used."],
  ]);
});

test("row check settles days without a year by the day it is asked about", () => {
  const sheet = [
    ["Jump tests"],
    ["1) box jump", "28 Apr", "5 May", "12 May", "19 May"],
    ["Ilka Brandmoor", 42, 43, 42, 43],
    ["Tomas Reyerson", 50, 49, 50, 49],
  ];
  expect(call("ROW_CHECK", sheet, "Jumps", "", "2026-05-20")).toEqual([
    ["all rows read", "", "", ""],
  ]);
  const undated = call("ROW_CHECK", sheet, "Jumps") as unknown[][];
  expect(undated[0]![2]).toMatch(/year/);
});

test("past the chart's ten repetitions no number of them is told as known", () => {
  const said = (kg: number) =>
    (call("NEXT_BLOCK", "5x3", kg, "n", "", "", 112, 2.5) as unknown[][])[0]![2];
  expect(said(60)).toBe(
    "movement first: held until it is clean (more than ten repetitions in reserve)",
  );
  expect(said(85)).toMatch(/\(about 6\.\d repetitions in reserve\)$/);
});

test("a first row of headings stays blank, a first row that is no heading is told", () => {
  const speeds = [
    ["Rep 1", "Rep 2 (m/s)"],
    [0.5, 0.45],
  ];
  expect(call("VELOCITY_LOSS", speeds)).toEqual([[""], [0.1]]);
  expect(call("FLIGHT_HEIGHT", [["Flight time (s)"], [0.5]])).toEqual([[""], [30.6458]]);
  expect(
    call("NEXT_BLOCK", [["Exercise"], ["5x5"]], [["Load (kg)"], [70]], "y", "y", "y", 100, 2.5),
  ).toEqual([
    ["", "", ""],
    ["3×5", 72.5, expect.any(String)],
  ]);
  const said = call("FLIGHT_HEIGHT", [["missed"], [0.5]]) as unknown[][];
  expect(said[0]![0]).toMatch(/^flight_time is not a number \(missed\)/);
  // A heading further down is a cell of its own.
  expect(String((call("FLIGHT_HEIGHT", [[0.5], ["Flight time (s)"]]) as unknown[][])[1])).toMatch(
    /^flight_time is not a number/,
  );
  // One of the cells is no heading.
  const mixed = call("REACTIVE_STRENGTH", [["Height (cm)"], [36]], [[0.18], [0.18]]);
  expect(String((mixed as unknown[][])[0])).toMatch(/^height is not a number \(Height \(cm\)\)/);
});

test("a cell may name its unit, and a heading that of the cells under it", () => {
  expect(call("REACTIVE_STRENGTH", [["36 cm"], ["0,36 m"], ["360 mm"]], 0.18)).toEqual([
    [2],
    [2],
    [2],
  ]);
  // 14 in are 35.56 cm (an inch is 2.54 cm exactly, NIST SP 811).
  expect(call("REACTIVE_STRENGTH", '14"', 0.2)).toBe(1.778);
  const inches = [["Height (in)"], [14], ["36 cm"]];
  expect(call("REACTIVE_STRENGTH", inches, [["Contact time (s)"], [0.2], [0.18]])).toEqual([
    [""],
    [1.778],
    [2],
  ]);
  expect(call("FLIGHT_HEIGHT", 0.5, "0.3 m")).toBe(call("FLIGHT_HEIGHT", 0.5, 30));
  // 191.802 lb are 87 kg (a pound is 0.45359237 kg exactly), the chart's five.
  expect(call("REPS_IN_RESERVE", "191.802 lb", 5, "100 kg")).toBe(0);
  expect(call("LOAD_DROP", "85 kg", "0.79 m/s", "86 cm/s", "2,5 kg")).toBe(80);
  expect(call("NEXT_BLOCK", "5x5", "70 kg", "y", "y", "y", "220.462262 lb", "2.5 kg")).toEqual(
    call("NEXT_BLOCK", "5x5", 70, "y", "y", "y", 100, 2.5),
  );
  // A unit of another quantity makes no number, nor does a first cell that is a figure itself.
  expect(() => call("REACTIVE_STRENGTH", "36 kg", 0.18)).toThrow("height is not a number (36 kg)");
  expect(call("REACTIVE_STRENGTH", [["14 in"], [36]], 0.2)).toEqual([[1.778], [1.8]]);
});

test("a stack of pound plates is refused in pounds", () => {
  const pounds = [
    ["mass (lb)", "thickness (in)", "owned"],
    [45, 1.8, 2],
  ];
  // 2 · 1.8 in · 2.54 cm
  expect(call("STACK_HEIGHT", "2x45", pounds)).toBe(9.144);
  expect(() => call("STACK_HEIGHT", "2x20", pounds)).toThrow("Plate 1 of the stack is 20 lb, and");
  expect(() => call("STACK_HEIGHT", "3x45", pounds)).toThrow(
    "The stack needs more 45 lb plates than the 2 the Plates table says there are.",
  );
  expect(() => call("STACK_HEIGHT", "7", plates)).toThrow("Plate 1 of the stack is 7 kg, and");
});

test("a cap gives each set the repetition that reached it first and the second in a row", () => {
  const sets = [
    [0.6, 0.55, 0.47, 0.45],
    [0.6, 0.47, 0.55, 0.58],
    ["", "", "", ""],
    [0.6, 0.59, "", ""],
    ["slow", "", "", ""],
  ];
  expect(call("VELOCITY_LOSS", sets, 0.2)).toEqual([
    [0.25, 3, 4],
    [0.0333333, 2, ""],
    ["", "", ""],
    [0.0166667, "", ""],
    [expect.stringContaining("Not a speed (slow)"), "–", "–"],
  ]);
  expect(call("VELOCITY_LOSS", sets.slice(0, 2), [[0.2], [""]])).toEqual([
    [0.25, 3, 4],
    [0.0333333, "", ""],
  ]);
  for (const cap of [0, -0.1, 0.51, 20])
    expect(() => call("VELOCITY_LOSS", [sets[0]], cap)).toThrow(`A cap of ${cap} is not possible`);
  expect(call("VELOCITY_LOSS", [sets[0]], 0.5)).toEqual([[0.25, "", ""]]);
});
