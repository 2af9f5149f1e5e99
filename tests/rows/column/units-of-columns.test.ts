import { mendDecimalPoint } from "../../../src/rows/column/mend";
import { numberCell } from "../../../src/rows/column/number-cell";
import { understandTable } from "../../../src/rows/read-table";
import { oneColumn, told } from "./one-column";

const speeds = (cells: readonly unknown[], heading = "Speed") => {
  const column = oneColumn("Sets", heading, cells);
  return { read: column.reading.records.map(({ setSpeed }) => setSpeed), told: told(column) };
};
const loads = (cells: readonly unknown[], heading = "Load") => {
  const column = oneColumn("Sets", heading, cells);
  const read = column.reading.records.map(({ loadKg }) => loadKg && Math.round(loadKg * 10) / 10);
  return { read, told: told(column) };
};
const heights = (cells: readonly unknown[], heading = "Height") => {
  const column = oneColumn("Jumps", heading, cells);
  return { read: column.reading.records.map(({ heightCm }) => heightCm), told: told(column) };
};

test("five readings that fit another unit alone settle it, four are slips one by one", () => {
  expect(speeds([62, 60, 58, 57])).toEqual({
    read: [null, null, null, null],
    told: ["2 implausible", "3 implausible", "4 implausible", "5 implausible"],
  });
  expect(speeds([62, 60, 58, 57, 55])).toEqual({ read: [0.62, 0.6, 0.58, 0.57, 0.55], told: [] });
  expect(speeds(["62", "60", "58", "57", "55"]).read).toEqual([0.62, 0.6, 0.58, 0.57, 0.55]);
  expect(speeds([620, 600, 580, 570, 550]).read).toEqual([0.62, 0.6, 0.58, 0.57, 0.55]);
});

test("where half of a column fits as it stands, the rest are slips with a mend", () => {
  const half = speeds([0.62, 60, 0.58, 57, 0.55, 54]);
  expect(half.read).toEqual([0.62, null, 0.58, null, 0.55, null]);
  expect(half.told).toEqual(["3 implausible 0.6", "5 implausible 0.57", "7 implausible 0.54"]);
});

test("four in five must fit the other unit; cells that name their own are not counted", () => {
  expect(speeds([62, 60, 58, 57, 5]).read).toEqual([0.62, 0.6, 0.58, 0.57, null]);
  expect(speeds([62, 60, 58, 4, 5]).read).toEqual([null, null, null, null, null]);
  expect(speeds([62, 60, 58, 57, "0.55 m/s"]).told).toHaveLength(4);
  expect(speeds([0.62, "61 cm/s", "600 mm/s", "0.59 m/s"]).read).toEqual([0.62, 0.61, 0.6, 0.59]);
});

test("a column that two other units fit is asked about, and nothing of it is read", () => {
  const column = oneColumn("Sets", "Speed", [110, 120, 130, 140, 150]);
  expect(told(column)).toEqual(["1 unit-unsettled"]);
  expect(column.reading.issues[0]!.facts).toEqual({ units: "cm/s or mm/s", heading: "Speed" });
  expect(column.reading.records.map(({ setSpeed }) => setSpeed)).toEqual(Array(5).fill(null));
  expect(column.questions).toMatchObject([{ column: 4, about: "unit", choices: ["cm/s", "mm/s"] }]);
});

test("pounds under “Lb.” or “lbs:” are pounds, however light", () => {
  for (const heading of ["lb", "Lb.", "lbs:", "Load (lb)"])
    expect(loads([65, 85, 110], heading)).toEqual({ read: [29.5, 38.6, 49.9], told: [] });
});

test("heights of a whole column in metres or millimetres are heights in centimetres", () => {
  expect(heights([0.41, 0.42, 0.43, 0.4, 0.39]).read).toEqual([41, 42, 43, 40, 39]);
  expect(heights([410, 420, 430, 400, 390]).read).toEqual([41, 42, 43, 40, 39]);
  expect(heights([41, 0.42, 43, 40]).told).toEqual(["3 implausible 42"]);
  // Half of them may well be centimetres, though all could be millimetres.
  expect(heights([50, 60, 70, 500, 600, 700]).read).toEqual([50, 60, 70, null, null, null]);
});

test.each([
  ["over 160 in more than half", [161, 162, 163, 100, 101], true],
  ["over 160 in half, not ending in five", [161, 162, 100, 101], false],
  ["160 itself is not over it", [160, 160, 160, 160], false],
  ["four ending in five, one in seven heavy", [95, 105, 115, 125, 135, 145, 165], true],
  ["one in eight heavy", [95, 105, 115, 125, 135, 145, 150, 165], false],
  ["five different ones that all end in five, none heavy", [65, 75, 85, 95, 105, 65], true],
  ["four of them", [65, 75, 85, 95, 65], false],
  ["whole fives, one in seven heavy", [95, 100, 135, 140, 150, 160, 165], true],
  ["whole fives, one in eight heavy", [95, 100, 130, 135, 140, 150, 160, 165], false],
  ["one of them no whole five", [95, 100, 135, 140, 150, 162.5, 165], false],
  ["four different ones", [135, 145, 155, 165], true],
  ["three different ones", [135, 145, 165, 135, 145, 165], false],
  ["four in five ending in five", [135, 145, 155, 165, 150], true],
  ["three in four ending in five", [135, 145, 165, 150], false],
])("loads may be pounds: %s", (_, cells, asked) => {
  const column = loads(cells);
  expect(column.told).toEqual(asked ? ["1 unit-unsettled"] : []);
  expect(column.read).toEqual(asked ? cells.map(() => null) : cells);
});

test("a cell that names pounds, near the bare figures beside it, puts them in doubt; in a gym of kilograms it does not", () => {
  const doubt = { read: Array(5).fill(null), told: ["1 unit-unsettled"] };
  expect(loads([95, 100, 140, 140, "135 lb"]).told).toEqual(doubt.told);
  expect(loads([95, 100, 140, 140, "60 kg"]).told).toEqual(doubt.told);
  const inKilograms = loads([75, 80, 82.5, 87.5, "175 lb", "85 kg"]);
  expect(inKilograms).toEqual({ read: [75, 80, 82.5, 87.5, 79.4, 85], told: [] });
});

test("a height that names inches, near the bare figures beside it, puts them in doubt; one that is like their centimetres does not", () => {
  const asked = oneColumn("Jumps", "Height", [15.5, '15"', 15.2, 16, "14.8"]);
  expect(told(asked)).toEqual(["1 unit-unsettled"]);
  expect(asked.reading.issues[0]!.facts).toEqual({ units: "cm or in", heading: "Height" });
  expect(heights([38, '15"', 39, 40]).read).toEqual([38, 38.1, 39, 40]);
  expect(heights([38, "0.39 m", "41 cm", 40]).told).toEqual([]);
});

test.each([
  ["(all loads in lb incl. 45 lb bar)", 61.2],
  ["Weights in pounds", 61.2],
  ["Strength log – kg", 135],
])("a title that names the unit of the loads settles it: %s", (title, first) => {
  const cells = [
    [title, "", "", ""],
    ["Date", "Athlete", "Exercise", "Load"],
    ...[135, 185, 205, 225, 245].map((load) => ["2026-05-12", "Ilka", "squat", load]),
  ];
  const { reading } = understandTable("Sets", cells);
  expect(told({ reading })).toEqual([]);
  expect(reading.records[0]!.loadKg).toBeCloseTo(first, 1);
});

test.each(["20 kg bar", "45 lb bar", "kg or lb?"])(
  "a title that names a bar's mass or both units settles nothing: %s",
  (title) => {
    const cells = [
      [title, "", "", ""],
      ["Date", "Athlete", "Exercise", "Load"],
      ...[135, 185, 205, 225, 245].map((load) => ["2026-05-12", "Ilka", "squat", load]),
    ];
    expect(told(understandTable("Sets", cells))).toEqual(["2 unit-unsettled"]);
  },
);

test("the mass of a bar has no other unit to be asked about", () => {
  const { reading } = oneColumn("Sets", "Bar mass", [15, 25, 35, 5, 15]);
  expect(reading.records.map(({ barKg }) => barKg)).toEqual([15, 25, 35, 5, 15]);
  expect(told({ reading })).toEqual([]);
  const pounds = oneColumn("Sets", "Bar mass", [165, 175, 185, 195]);
  expect(told(pounds)).toEqual([2, 3, 4, 5].map((row) => `${row} implausible`));
});

test("a figure with a group of thousands in a column that may be pounds waits for the answer", () => {
  expect(loads([185, 225, 245, 275, "1,250"])).toEqual({
    read: Array(5).fill(null),
    told: ["1 unit-unsettled"],
  });
});

test("figures under a heading in another unit than a column's are read as they stand", () => {
  const list = oneColumn("Sets", "Speeds (ms)", ["0.62 0.60"]).reading.records[0]!;
  expect(list.repSpeeds).toEqual([0.62, 0.6]);
  expect(heights([5, 50], "Height (mm)").told).toEqual(["2 implausible"]);
  expect(heights([5, 50], "Height (mm)").read).toEqual([null, 5]);
  expect(loads([Number.NaN, Number.POSITIVE_INFINITY], "Load (kg)").told).toEqual([
    "2 not-a-number",
    "3 not-a-number",
  ]);
  const least = oneColumn("Jumps", "Contact time (s)", [80]).reading.records[0]!;
  expect(least.contactS).toBe(0.08);
});

test("a mend lies among all other figures of the column, the least and the greatest", () => {
  expect(loads([40, 120, 400], "Load (kg)").told).toEqual(["4 implausible 40"]);
  expect(loads([120, 40, 1200], "Load (kg)").told).toEqual(["4 implausible 120"]);
  // 3000 is none of them itself: it is not 300 beside 100.
  expect(loads([100, 3000], "Load (kg)").told).toEqual(["3 implausible"]);
  const list = oneColumn("Sets", "Speeds (m/s)", ["0.30 0.62 30"]);
  expect(told(list)).toEqual(["2 implausible 0.30 0.62 0.3"]);
});

test("a figure that cannot be leaves its row in; an unticked box is none", () => {
  const { reading } = oneColumn("Sets", "Speed (m/s)", [62, 0.62]);
  expect(reading.issues.map(({ dropsRow }) => dropsRow)).toEqual([false]);
  expect(reading.records.map(({ setSpeed }) => setSpeed)).toEqual([null, 0.62]);
  expect(speeds([false, 0.62]).told).toEqual([]);
  const jumps = oneColumn("Jumps", "Height (cm)", [999, 40]).reading;
  expect(jumps.issues.map(({ code, dropsRow }) => [code, dropsRow])).toEqual([
    ["implausible", false],
  ]);
});

test("the least and the greatest speed that can be fit their unit", () => {
  expect(speeds(Array(5).fill(8)).read).toEqual(Array(5).fill(0.08));
  expect(speeds(Array(5).fill(350)).told).toEqual(["1 unit-unsettled"]);
  const landing = oneColumn("Jumps", "Landing height (mm)", ["1,500"]);
  expect(told(landing)).toContain("2 comma-unsettled");
});

test("a mend moves the point of a figure in the column's own unit only", () => {
  expect(loads([80, 82.5, 825], "Load (kg)").told).toEqual(["4 implausible 82.5"]);
  // 1900 lb are 862 kg, and yet no 86.2 among 80 and 90: those are pounds too.
  expect(loads([80, 90, 1900], "Load (lb)").told).toEqual(["4 implausible"]);
  expect(speeds([62, 60, 620], "Speed (cm/s)").told).toEqual(["4 implausible"]);
  // 9999 mm is no 99.99 among 100 and 120: those are millimetres too.
  expect(heights([100, 120, 9999], "Height (mm)").told).toEqual(["4 implausible"]);
  expect(loads([80, 1250, "80 m"], "Load (kg)").read).toEqual([80, null, null]);
});

test("what is told of a figure out of bounds are the bounds, and of a foreign unit the right one", () => {
  const { reading } = oneColumn("Sets", "Load (kg)", [
    80,
    999,
    "80 cm",
    "82?",
    new Date(2026, 4, 1),
  ]);
  expect(reading.issues.map(({ code, facts }) => [code, facts])).toEqual([
    ["implausible", { heading: "Load (kg)", low: 1, high: 350, unit: "kg", mend: 99.9 }],
    ["wrong-unit", { heading: "Load (kg)", unit: "kg" }],
    ["unsure", { heading: "Load (kg)", mend: 82 }],
    ["date-in-number", { heading: "Load (kg)" }],
  ]);
});

test("contact and flight: one cell settles seconds or milliseconds by itself", () => {
  const column = oneColumn("Jumps", "Contact time", [
    182,
    0.18,
    "182",
    "0,19 s",
    "190 ms",
    1200,
    2,
  ]);
  expect(column.reading.records.map(({ contactS }) => contactS)).toEqual([
    0.182,
    0.18,
    0.182,
    0.19,
    0.19,
    1.2,
    null,
  ]);
  expect(told(column)).toEqual(["8 implausible 0.2"]);
  const named = oneColumn("Jumps", "Contact time (ms)", [182, 0.18, "0.19"]);
  expect(named.reading.records.map(({ contactS }) => contactS)).toEqual([0.182, 0.18, 0.19]);
});

test("bounds belong to what is plausible", () => {
  expect(loads([1, 350, 0.9, 351], "Load (kg)").read).toEqual([1, 350, null, null]);
  expect(speeds([0.08, 3.5, 0.07, 3.6]).read).toEqual([0.08, 3.5, null, null]);
  expect(heights([3, 130, 2.9, 131], "Height (cm)").read).toEqual([3, 130, null, null]);
  expect(loads(["1", "350", "0,9", "351"], "Load (kg)").read).toEqual([1, 350, null, null]);
});

test.each([
  ["“12,5” elsewhere makes commas decimal", ["1,250", "12,5"], 0.125],
  ["a comma before four figures does too", ["1,250", " 30,1250"], 0.125],
  ["“12,5 mm” does too", ["1,250", "12,5 mm"], 0.125],
  ["“1,250.5” makes them group thousands", ["1,250", " 1,000.5"], 125],
  ["“12,55” does too", ["1,250", "12,55"], 0.125],
  ["“10,000.5” makes them group thousands too", ["1,250", "10,000.5"], 125],
  ["three groups after two figures do too", ["1,250", "12,000,000"], 125],
  ["three groups do too", ["1,250", "1,000,000"], 125],
  ["three groups behind a space do too", ["1,250", " 1,000,000"], 125],
])("%s", (_, cells, cm) => {
  const { reading } = oneColumn("Jumps", "Landing height (mm)", cells);
  expect(reading.records[0]!.landingCm).toBe(cm);
});

test.each([
  ["nothing else", ["1,250"]],
  ["both ways at once", ["1,250", "12,5", "1,000.5"]],
  ["words before a figure", ["1,250", "about 12,5"]],
  ["words before thousands", ["1,250", "about 1,000.5"]],
  ["words before millions", ["1,250", "about 1,000,000"]],
  ["a sign before millions", ["1,250", "~1,000,000"]],
  ["three figures behind another comma", ["1,250", "1,100"]],
  ["a plain number", ["1,250", 12.5]],
])("a comma is unsettled with %s in its column", (_, cells) => {
  const { reading } = oneColumn("Jumps", "Landing height (mm)", cells);
  expect(reading.issues[0]).toMatchObject({
    cell: "D2",
    code: "comma-unsettled",
    facts: { either: 1.25, or: 1250 },
  });
  expect(reading.records[0]!.landingCm).toBeNull();
});

test.each([
  [62, 0.5, 0.7, 0.62],
  [620, 0.5, 0.7, 0.62],
  [6.2, 0.5, 0.7, 0.62],
  [0.062, 0.5, 0.7, 0.62],
  [0.62, 50, 70, 62],
  [0.062, 50, 70, null],
  [62, 0.5, 70, null],
  [62, 0.7, 0.5, null],
  [62, 0.93, 0.93, null],
  [67, 1, 1, 0.67],
  [66.9, 1, 1, null],
  [133, 1, 1, 1.33],
  [134, 1, 1, null],
  [1000, 90, 90, 100],
  [1010, 90, 90, null],
  [0.5, 0.06, 0.06, 0.05],
  [0.49, 0.06, 0.06, null],
])("%p among %p to %p is mended to %p, within 0.05 and 100", (value, least, most, mended) => {
  expect(mendDecimalPoint(value, least, most, { low: 0.05, high: 100 })).toBe(mended);
});

test.each([
  ["85 (bar slipped, redo)", { value: 85, note: "bar slipped, redo", unit: null }],
  ["85kg ( slow ) ", { value: 85, note: "slow", unit: "kg" }],
  ["85(slow)", { value: 85, note: "slow" }],
  ["82,5 kg ?", { value: 82.5, unsure: true, unit: "kg" }],
  ["82,5 kg ??", { value: 82.5, unsure: true, unit: "kg" }],
  ["0.62 m.s-1", { value: 0.62, unit: "m/s" }],
  ["82,5 kg?", { value: 82.5, unsure: true, unit: "kg" }],
  ["85 ??", { value: 85, unsure: true }],
  ["62 cm/s", { value: 62, unit: "cm/s" }],
  ["0.62 m·s⁻¹", { value: 0.62, unit: "m/s" }],
  ['12.5"', { value: 12.5, unit: "in" }],
  [" 80 kg ", { value: 80, unit: "kg" }],
  ["80 lbs.", { value: 80, unit: "lb" }],
  ["20 %", { value: 20, unit: "%" }],
  ["-5 s", { value: -5, unit: "s" }],
])("“%s” is taken apart", (text, parts) => {
  const { value, unsure, unit, note, perHand } = numberCell(text)!;
  expect({ value, unsure, unit: unit?.name ?? null, note, perHand }).toEqual({
    unsure: false,
    unit: null,
    note: "",
    perHand: false,
    ...parts,
  });
});

test.each([
  "16/hand",
  "16 / Side",
  "16/arm",
  "16 / Seite",
  "16 per hand",
  "16 each side",
  "16 per arm",
  "16 Each  Arm",
  "16 per Seite",
  "16  each",
  "16 kg / hand",
  "16 kg each (light)",
  "16 kg  each",
  "16 kg  per hand",
])("“%s” is sixteen in each hand", (text) => {
  expect(numberCell(text)).toMatchObject({ value: 16, perHand: true, unsure: false });
});

test.each([
  "",
  "(85)",
  "hand 16",
  "16 hands",
  "16/hand/2",
  "16 each hand 2",
  "16 per",
  "16 each time",
  "16 each kg",
  "16/hand kg",
  "16 beach",
  "80 foo",
  "kg 80",
  "x85 kg",
  "80 (a) b",
  "85 (a) kg",
  "85 (a)b",
  "8?5",
])("“%s” is no number", (text) => {
  expect(numberCell(text)).toBeNull();
});

test("what can only be metres a second is read so until a figure shows another unit", () => {
  expect(speeds([0.62, 61, 60, 59, 58, 57]).read).toEqual([0.62, 0.61, 0.6, 0.59, 0.58, 0.57]);
  expect(speeds(["0.63 m/s", 0.62, 61, 60, 59, 58, 57]).read.slice(0, 3)).toEqual([
    0.63, 0.62, 0.61,
  ]);
});

test("the least figure there can be counts among those that a mend lies between", () => {
  // 400 could be 40 cm or a box of 4 or 0.4 cm where another drop was from the floor, 0 cm.
  const drops = (...cells: number[]) =>
    told(oneColumn("Jumps", "Drop height (cm)", cells)).filter((one) => /implausible/.test(one));
  expect(drops(40, 400)).toEqual(["3 implausible 40"]);
  expect(drops(40, 0, 400)).toEqual(["4 implausible"]);
  // 350 kg is the greatest load there can be; 3600 is no 360, which cannot be either.
  expect(loads([80, 350, 3500, 3600], "Load (kg)").told).toEqual([
    "4 implausible 350",
    "5 implausible",
  ]);
});

test("a drop or a landing of 0.3 is metres where no unit is named; level ground is 0 in any", () => {
  const landings = (cells: readonly unknown[], heading = "Landing height") => {
    const column = oneColumn("Jumps", heading, cells);
    const said = told(column).filter((one) => !/no-figure/.test(one));
    return [column.reading.records.map(({ landingCm }) => landingCm), said];
  };
  expect(landings([0.3, 0.3, 0, 0.45, 0.3, 0.3])).toEqual([[30, 30, 0, 45, 30, 30], []]);
  expect(landings([0, 30, 0, 30, 0])).toEqual([[0, 30, 0, 30, 0], []]);
  // Too few to settle it, and one among centimetres: named, not read.
  expect(landings([0.3])).toEqual([[null], ["2 implausible"]]);
  expect(landings([30, 30, 30, 0.3])).toEqual([[30, 30, 30, null], ["5 implausible"]]);
  expect(landings([0.3], "Landing (m)")).toEqual([[30], []]);
  const drops = oneColumn("Jumps", "Drop height", [0.3, 0.3, 0.45, 0.3, 0.3, 0]);
  expect(drops.reading.records.map(({ dropCm }) => dropCm)).toEqual([30, 30, 45, 30, 30, 0]);
});

test("a figure written as text is in the unit of its heading", () => {
  expect(speeds(["62", "60 "], "Speed (cm/s)")).toEqual({ read: [0.62, 0.6], told: [] });
  expect(loads(["180"], "Load (lb)")).toEqual({ read: [81.6], told: [] });
});

test("a thousand letters with a figure among them are words", () => {
  const beside = (letters: number) => `85 (${"a".repeat(letters - 5)})`;
  expect(numberCell(beside(1000))).toMatchObject({ value: 85 });
  expect(numberCell(beside(1001))).toBeNull();
});
