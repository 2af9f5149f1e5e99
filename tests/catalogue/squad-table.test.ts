import { catalogue } from "../../src/catalogue";
import { exampleDiary, exampleJumps, exampleSets } from "../../src/catalogue/example-rows";

const table = catalogue.find(({ name }) => name === "SQUAD_TABLE")!;
const asOf = "2026-05-21";
const spells = [
  ["athlete", "from", "until", "may do", "by"],
  ["Ilka Brandmoor", "2026-05-12", "", "cleared", ""],
];
const races = [
  ["date", "race", "athlete or group or all", "matters"],
  ["2026-05-23", "R2", "road", "A"],
  ["2026-07-04", "R4", "all", "A"],
];
const athletes = [
  ["Athlete", "Group"],
  ["Tomas Reyerson", "road"],
  ["Ilka Brandmoor", "track"],
  ["Maren Aspholt", "road"],
];
const squad = (over: Record<number, unknown> = {}) => {
  const args = [athletes, spells, exampleSets, exampleJumps, exampleDiary, races, asOf];
  return table.compute(args.map((arg, at) => (at in over ? over[at] : arg))) as unknown[][];
};

test("one row for each athlete of the table, the one without rows too", () => {
  const rows = squad();
  expect(rows.map(([name]) => name)).toEqual(["Tomas Reyerson", "Ilka Brandmoor", "Maren Aspholt"]);
  expect(rows.every((row) => row.length === table.results.length)).toBe(true);
  expect(rows[2]!.slice(2, 10)).toEqual([
    "too few rows (no sets or jumps recorded)",
    "–",
    "–",
    "–",
    "–",
    "–",
    "⠀⠀⠀⠀⠀⠀⠀",
    "–",
  ]);
});

test("full is said only where availability was given and read", () => {
  expect(squad().map((row) => row[1])).toEqual(["full", "not cleared", "full"]);
  expect(squad({ 1: "" }).map((row) => row[1])).toEqual(["not given", "not given", "not given"]);
  const unread = [spells[0]!, ["Tomas Reyerson", "some day", "", "out", ""]];
  expect(squad({ 1: unread })[0]![1]).toBe("unclear: a row was not read");
});

test("the next race of the athlete's own group is named", () => {
  const notes = squad().map((row) => String(row[11]));
  expect(notes[0]).toContain("A race in 2 days: R2, 23 May.");
  expect(notes[1]).toContain("A race in 44 days: R4, 4 Jul.");
});

test("rows not used are counted with their athlete, and those of nobody listed are said once", () => {
  const spoiled = [
    ...exampleSets,
    ["2026-05-21", "Ilka Brandmoor", "back squat", 3, 60, 62],
    ["2026-05-21", "Oona Petrakell", "back squat", 3, 60, 62],
    ["2026-05-21", "", "back squat", 3, 60, 0.62],
  ];
  const rows = squad({ 2: spoiled });
  expect(rows.map((row) => row[10])).toEqual([0, expect.any(Number), 0]);
  expect(Number(rows[1]![10])).toBeGreaterThan(0);
  expect(rows.map((row) => /belong to nobody in this list/.test(String(row[11])))).toEqual([
    true,
    false,
    false,
  ]);
});

test("the plain season picture is a rule", () => {
  const plain = table.compute([
    athletes,
    spells,
    exampleSets,
    exampleJumps,
    exampleDiary,
    races,
    asOf,
    "",
    [
      ["rule", "value"],
      ["Season picture: plain", 1],
    ],
  ]) as unknown[][];
  expect(String(plain[0]![8])).toMatch(/^[-_¯ ]{7}$/);
});

test("who has rows under a name near the own one is told which; a name that is another's is none", () => {
  const named = exampleSets.map((row) =>
    row.map((cell) => (cell === "Tomas Reyerson" ? "Tomas" : cell)),
  );
  const jumps = exampleJumps.map((row) =>
    row.map((cell) => (cell === "Tomas Reyerson" ? "Tomas" : cell)),
  );
  const diary = exampleDiary.map((row) =>
    row.map((cell) => (cell === "Tomas Reyerson" ? "Tomas" : cell)),
  );
  const notes = (list: readonly unknown[][] = athletes) =>
    squad({ 0: list, 2: named, 3: jumps, 4: diary }).map((row) => String(row[11]));
  expect(notes()[0]).toContain(
    "No sets or jumps of Tomas Reyerson in the rows given: is this Tomas? Write one name in both tabs.",
  );
  expect(notes()[2]).toContain("No sets or jumps of Maren Aspholt in the rows given.");
  expect(notes([...athletes, ["Tomas", "road"]])[0]).toContain(
    "No sets or jumps of Tomas Reyerson in the rows given.",
  );
});
