import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";

const today = dayFromIso("2026-06-10")!;
const dates = Array.from({ length: 8 }, (_, at) => `${at + 5} June`);
const grid = (
  rows: readonly unknown[][],
  head: readonly unknown[][] = [],
  foot: readonly unknown[][] = [],
) => [...head, ["Athlete", ...dates], ...rows, ...foot];
const legend = [["June", "A = available, I = injured; S = sick, M = modified"]];
const spellsOf = (cells: readonly unknown[][], said = true) => {
  const { reading } = understandTable("Availability", cells, {
    today,
    said,
    title: "Availability",
  });
  return {
    spells: reading.records.map(
      ({ athlete, mayDo, from, until }) =>
        `${athlete} ${mayDo} ${isoFromDay(from)} ${until === null ? "on" : isoFromDay(until)}`,
    ),
    issues: reading.issues.map(({ code, cell, found }) => `${code} ${cell} ${found}`),
  };
};

test("letters that a legend explains are spells, one for each run of days", () => {
  const cells = grid([["Niamh", "A", "A", "I", "I", "I", "M", "A", "A"]], legend);
  expect(spellsOf(cells)).toEqual({
    spells: [
      "Niamh full 2026-06-05 2026-06-06",
      "Niamh out 2026-06-07 2026-06-09",
      "Niamh modified 2026-06-10 2026-06-10",
      "Niamh full 2026-06-11 2026-06-12",
    ],
    issues: [],
  });
});

test.each([
  [
    "where free days are marked too, whoever was last marked out stays out until the next mark",
    ["Niamh", "A", "A", "I", "I", "", "", "", ""],
    ["Liam", "A", "A", "A", "A", "", "", "", ""],
    [
      "Niamh full 2026-06-05 2026-06-06",
      "Niamh out 2026-06-07 on",
      "Liam full 2026-06-05 2026-06-08",
    ],
  ],
  [
    "where only what limits is marked, a blank day is free, but for whoever is out on the last day marked",
    ["Niamh", "", "I", "I", "", "", "", "", ""],
    ["Liam", "", "", "", "", "S", "S", "", ""],
    ["Niamh out 2026-06-06 2026-06-07", "Liam out 2026-06-09 on"],
  ],
])("%s", (_, niamh, liam, spells) => {
  expect(spellsOf(grid([niamh, liam], legend)).spells).toEqual(spells);
});

test("a letter nobody explains is told by its cell, once for its days; words count as they stand", () => {
  const cells = grid([["Aoife", "E", "E", "", "", "ill", "ill", "full", ""]], legend);
  expect(spellsOf(cells)).toEqual({
    spells: ["Aoife out 2026-06-09 2026-06-10", "Aoife full 2026-06-11 2026-06-11"],
    issues: ["word-unknown B3 E"],
  });
});

test("a legend below the athletes, letter beside word, is no athlete", () => {
  const cells = grid(
    [["Niamh", "", "K", "K", "", "", "", "", "A"]],
    [],
    [
      ["K", "krank"],
      ["A", "anwesend"],
    ],
  );
  expect(spellsOf(cells)).toEqual({
    spells: ["Niamh out 2026-06-06 2026-06-07", "Niamh full 2026-06-12 2026-06-12"],
    issues: [],
  });
});

test("an athlete with one word in the row is no legend, however short the name; a short word that is marked is one", () => {
  const [free, one] = [Array(8).fill(""), ["", "injured", ...Array(6).fill("")]];
  const out = (name: string) => `${name} out 2026-06-06 on`;
  for (const name of ["Ida", "Bo", "Niamh"])
    expect(
      spellsOf(
        grid([
          [name, ...one],
          ["Liam", ...free],
        ]),
      ).spells,
    ).toEqual([out(name)]);
  const marked = grid([["Ida", "", "inj", ...free.slice(2)]], [], [["inj", "injured"]]);
  expect(spellsOf(marked)).toEqual({ spells: [out("Ida")], issues: [] });
  // Nor are words about an athlete.
  const about = grid(
    [["Bo", ...one]],
    [["June", "A = available, I = injured; Bo – back on Friday"]],
  );
  expect(spellsOf(about)).toEqual({ spells: [out("Bo")], issues: [] });
  // No one is called by a letter.
  expect(spellsOf(grid([["Ida", ...one]], [], [["H", "holiday"]])).spells).toEqual([out("Ida")]);
});

test("an unticked box and a row that ends early say nothing of their days", () => {
  const cells = grid([
    ["Niamh", false, "I", "I", false],
    ["Liam", "A"],
  ]);
  expect(spellsOf([...legend, ...cells])).toEqual({
    spells: ["Niamh out 2026-06-06 on", "Liam full 2026-06-05 2026-06-05"],
    issues: [],
  });
});

test("a legend stands at the beginning of what a cell says", () => {
  const found = (letters: number) =>
    spellsOf(grid([["Niamh", "H"]], [[`${"x".repeat(letters)} H = injured, A = available`]]))
      .spells;
  expect([found(380), found(400)]).toEqual([["Niamh out 2026-06-05 on"], []]);
});

test("a legend may stand right of an empty column", () => {
  const cells = grid(
    [["Niamh", "", "K", "", "", "", "", "", ""]],
    [],
    [
      ["K", "krank"],
      ["A", "anwesend"],
    ],
  );
  expect(spellsOf(cells.map((line) => ["", ...line])).spells).toEqual(["Niamh out 2026-06-06 on"]);
});

test("such a grid is found by its name or its legend, and asked about where nothing explains it", () => {
  const found = (name: string, cells: readonly unknown[][]) =>
    findTables([{ name, cells }], { today }).map(
      ({ table, sureness }) => `${table} ${sureness >= 0.6 ? "sure" : "asked"}`,
    );
  const rows = [["Niamh", "A", "A", "I", "I", "I", "A", "A", "A"]];
  expect(found("June", grid(rows, legend))).toEqual(["Availability sure"]);
  expect(found("Verfügbarkeit", grid([["Niamh", "krank", "krank"]]))).toEqual([
    "Availability sure",
  ]);
  expect(found("Availability", grid([["Niamh", "Q", "Q"]]))).toEqual(["Availability asked"]);
  expect(found("June", grid([["Niamh", "Q", "Q"]]))).toEqual([]);
});

test.each([
  [
    "who was out one week and marked free the next is out no more",
    ["I", "I", "I"],
    ["A", "A", ""],
    ["Niamh out 2026-06-05 2026-06-07", "Niamh full 2026-06-12 2026-06-13"],
  ],
  [
    "who is out on the last day marked of all weeks stays out",
    ["", "I", ""],
    ["", "I", "I"],
    ["Niamh out 2026-06-06 2026-06-06", "Niamh out 2026-06-13 on"],
  ],
  [
    "another athlete’s later mark closes none, where free days are marked",
    ["A", "I", "I"],
    ["", "", ""],
    ["Niamh full 2026-06-05 2026-06-05", "Niamh out 2026-06-06 on"],
  ],
])("weeks one under another: %s", (_, first, second, spells) => {
  const weeks = [
    ...legend,
    ["Athlete", "5 June", "6 June", "7 June"],
    ["Niamh", ...first],
    ["", "", "", ""],
    ["Athlete", "12 June", "13 June", "14 June"],
    ["niamh", ...second],
    ["Liam", second[0] === "" && second[1] === "" ? "A" : "", "", ""],
  ];
  const told = spellsOf(weeks).spells.filter((one) => /niamh/i.test(one));
  expect(told.map((one) => one.replace("niamh", "Niamh"))).toEqual(spells);
});

test("one letter that says what an athlete may do explains the grid, whatever the others say", () => {
  const cells = grid(
    [["Niamh", "A", "H", "", "", "", "", "", ""]],
    [["June", "A = fit, H = home"]],
  );
  const { reading } = understandTable("Availability", cells, { today, title: "June" });
  expect(reading.records.map(({ mayDo }) => mayDo)).toEqual(["full"]);
  expect(reading.issues.map(({ code, cell }) => `${code} ${cell}`)).toEqual(["word-unknown C3"]);
});

test("a legend speaks of availability where one of its letters does, a title above the dates by its words", () => {
  const cells = (...head: unknown[][]) => [
    ...head,
    ["Athlete", ...dates],
    ["Niamh", "A", "A", "I", "I", "I", "X", "A", "A"],
    ["Orla", "A", "A", "A", "A", "A", "A", "A", "A"],
  ];
  const tables = (...head: unknown[][]) =>
    findTables([{ name: "June", cells: cells(...head) }], { today }).map(({ table }) => table);
  expect(tables(["A = available, I = injured, X = exam"])).toContain("Availability");
  expect(tables(["A = alpha, I = iota, X = xi"])).not.toContain("Availability");
  expect(tables(["Who is injured or absent"])).toContain("Availability");
  // A word is one also where it begins a line, and one letter alone may be of a plan of runs.
  expect(tables(["Absences"])).toContain("Availability");
  expect(tables(["R = rest"])).not.toContain("Availability");
});
