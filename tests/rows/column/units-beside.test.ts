import { unitsBeside } from "../../../src/rows/column/units-beside";
import { understandTable } from "../../../src/rows/read-table";
import { readSets } from "../readers";

// Units in a column of their own; figures invented, the pound is 0.45359237 kg (NIST SP 811).

const day = new Date(2026, 4, 5);
const loads = (load: string, unit: string, ...rows: unknown[][]) =>
  readSets([
    ["Date", "Athlete", "Lift", load, unit],
    ...rows.map((row) => [day, "Ilka", "Squat", ...row]),
  ]);

test("a column of kg and lb says of each row what its load is in", () => {
  for (const heading of ["Unit", "kg/lb", "lb or kg", "Einheit", ""]) {
    const rows = [
      [200, "lb"],
      [100, "kg"],
      ["82,5", "kg"],
      ["175", "lb"],
      [" 182,5 ", " lb "],
    ];
    const { records, issues } = loads("Load", heading, ...rows);
    const pounds = (mass: number) => mass * 0.45359237;
    expect(records.map(({ loadKg }) => loadKg)).toEqual([
      pounds(200),
      100,
      82.5,
      pounds(175),
      pounds(182.5),
    ]);
    expect(issues).toEqual([]);
  }
});

test("units and loads may stand first, and their column is asked about no more", () => {
  for (const [heads, cells] of [
    [
      ["Load", "Unit", "Date", "Athlete", "Lift"],
      [200, "lb", day, "Ilka", "Squat"],
    ],
    [
      ["Unit", "Date", "Athlete", "Lift", "Load"],
      ["lb", day, "Ilka", "Squat", 200],
    ],
  ]) {
    const { reading, questions } = understandTable("Sets", [heads!, cells!]);
    expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([200 * 0.45359237]);
    expect([reading.issues, questions]).toEqual([[], []]);
  }
});

test("shorthand beside a unit is in that unit, each load of it, unless it says another itself", () => {
  const read = (load: string) =>
    loads("Load", "Unit", [load, "lb"], ["100x3", "kg"])
      .records.slice(0, -1)
      .map(({ loadKg, reps, repSpeeds, setSpeed }) =>
        [Math.round(loadKg! / 0.45359237), reps, ...repSpeeds, setSpeed].join(" ").trim(),
      );
  expect(read("175x5")).toEqual(["175 5"]);
  expect(read("175 x 5 .62")).toEqual(["175 5 0.62"]);
  expect(read("175x5 0.62")).toEqual(["175 5 0.62"]);
  expect(read("176,2x5")).toEqual(["176 5"]);
  expect(read("175x5, 185x3")).toEqual(["175 5", "185 3"]);
  expect(read("155/165/175")).toEqual(["155", "165", "175"]);
  expect(read("2x5 175")).toEqual(["175 5", "175 5"]);
  expect(read("2x5@175")).toEqual(["175 5", "175 5"]);
  expect(read("80kgx5")).toEqual(["176 5"]);
});

test("loads that say something themselves are left as written", () => {
  const { records, issues } = loads(
    "Load",
    "Unit",
    ["200 lb", "kg"],
    ["", "kg"],
    ["heavy", "kg"],
    ["x80", "lb"],
  );
  expect(records.map(({ loadKg }) => loadKg)).toEqual([200 * 0.45359237, null, null, null]);
  const told = issues.map(({ code, found }) => `${code} ${found}`);
  expect(told).toEqual(expect.arrayContaining(["not-a-number heavy", "not-a-number x80"]));
});

test("a column that holds anything else is no column of units, and a load's own unit is enough", () => {
  for (const [load, unit, ...rows] of [
    ["Load", "Unit", 80, "A"],
    ["Load (kg)", "Unit", 80, "lb"],
    ["Load", "Side", 80, "lb"],
    ["Load", "Unit", 80, "cm"],
  ] as const) {
    const cells = [
      ["Date", "Athlete", "Lift", load, unit],
      [day, "Ilka", "Squat", ...rows],
    ];
    expect(unitsBeside(cells)).toBe(cells);
  }
  const heads = ["Date", "Athlete", "Lift", "Load"];
  const squat = [day, "Ilka", "Squat", 80];
  for (const cells of [
    [[...heads, "Unit"]],
    [
      [...heads, "Unit"],
      [...squat, "lb"],
      [...squat, "A"],
    ],
    [
      [...heads, "Side", ""],
      [...squat, "L", "lb"],
    ],
  ])
    expect(unitsBeside(cells)).toBe(cells);
});
