import { fieldHeading } from "../../../src/rows/header/field-heading";
import { headerWords, plainWords } from "../../../src/rows/header/header-words";
import { recogniseHeader } from "../../../src/rows/header/recognise-header";

test.each([
  ["Load (lb)", "load", "lb"],
  ["Load {kg}", "load", "kg"],
  ["Größe [cm]", "grosse", "cm"],
  ["Ht, cm", "ht", "cm"],
  ["Bar speed m/s", "bar speed", "m/s"],
  ["Load in kg", "load", "kg"],
  ["Height in", "height in", null],
  ["in cm", "in", "cm"],
  ["load kg in lb", "load kg", "lb"],
  ["kg", "kg", "kg"],
  ["(m/s)", "", "m/s"],
  ["Form (good?)", "form good", null],
  ["Load (kg) lb", "load lb", "kg"],
  ["kg (lb)", "kg", "lb"],
  ["Load(kg)bar", "load bar", "kg"],
  ["Ht,cm", "ht", "cm"],
  ["Load kg *", "load", "kg"],
  ["Load (", "load", null],
  ["Height inch", "height", "in"],
  ["Duration min", "duration", "min"],
  ["Lb.", "lb", "lb"],
  ['"', "", "in"],
  ["m s-1:", "m s-1", "m/s"],
  ["Kg:", "kg", "kg"],
  ["Date*: ★", "date", null],
  ["Load - bar – kg", "load bar", "kg"],
  ["set_no.1", "set no 1", null],
  ["Load/bar", "load/bar", null],
  ["  Two \n  words ", "two words", null],
  ["open( bracket", "open bracket", null],
  ["\ufeffÜbung", "ubung", null],
])("the heading “%s” says %j in %p", (heading, words, unit) => {
  const taken = headerWords(heading);
  expect([taken.words, taken.unit?.name ?? null]).toEqual([words, unit]);
});

test("a sentence is no heading, nor is a figure", () => {
  expect(headerWords("a".repeat(80)).words).toBe("a".repeat(80));
  expect(headerWords("a".repeat(81)).words).toBe("");
  expect([5, null, new Date(2026, 4, 1)].map((cell) => headerWords(cell).words)).toEqual([
    "",
    "",
    "",
  ]);
  expect([5, null, true, " Ärger  ß "].map(plainWords)).toEqual(["5", "", "", "arger ss"]);
});

const read = (table: "Sets" | "Jumps", ...row: unknown[]) => {
  const { fields, repColumns, unknown } = recogniseHeader(table, row);
  return {
    fields: Object.fromEntries(Object.entries(fields).map(([field, { index }]) => [field, index])),
    reps: repColumns.map(({ index }) => index),
    unknown,
  };
};

test("the first of two equal headings counts, as of two meanings of one, blanks say nothing, others are unknown", () => {
  expect(read("Sets", "Movement").fields).toEqual({ exercise: 0 });
  expect(read("Sets", "Date", "", "Day", "Weather", 5, null, "(kg)")).toEqual({
    fields: { day: 0, load: 6 },
    reps: [],
    unknown: [2, 3],
  });
});

test("repetitions stand in the order of their numbers, in the table of sets alone", () => {
  const row = ["Rep 2", "r1", "Wdh #3", "v 4", "speed rep 5", "rep 123"];
  expect(read("Sets", ...row)).toEqual({ fields: {}, reps: [1, 0, 2, 3, 4], unknown: [5] });
  expect(read("Jumps", "Rep 1")).toEqual({ fields: {}, reps: [], unknown: [0] });
});

test("words around a meaning leave it as it is", () => {
  expect(read("Sets", "Avg best speed per set", "Total load").fields).toEqual({
    speed: 0,
    load: 1,
  });
  expect(read("Jumps", "Best jump height of each rep", "first trial").fields).toEqual({
    height: 0,
    attempt: 1,
  });
  expect(read("Sets", "bestspeed", "load per month").unknown).toEqual([0, 1]);
});

test("an order spelled out is a scheme, in the table of sets alone", () => {
  expect(read("Sets", "kg x sets x reps").fields).toEqual({ scheme: 0 });
  expect(read("Jumps", "kg x sets x reps").unknown).toEqual([0]);
});

test("a column keeps its heading as written, its words and its unit", () => {
  expect(recogniseHeader("Sets", [" Load (lb) "]).fields.load).toMatchObject({
    index: 0,
    heading: "Load (lb)",
    words: "load",
    unit: { name: "lb" },
  });
});

test("a meaning's own heading, and a word that is no meaning", () => {
  expect(fieldHeading("Sets", "movedWell")).toBe("movement ok");
  expect(fieldHeading("Sets", "rep 2")).toBe("rep 2");
  expect(fieldHeading("Sets", "scheme")).toBe("sets x reps");
  expect(fieldHeading("Sets", "setCount")).toBe("number of sets");
  expect(fieldHeading("Sets", "rep")).toBe("rep number");
});

test("which of a set's speeds it is, beside the unit alone, is a heading of speed; of loads it is none", () => {
  const fieldOf = (heading: string) =>
    Object.entries(recogniseHeader("Sets", [heading]).fields).map(([field, { words, unit }]) => [
      field,
      words,
      unit?.name,
    ]);
  expect(fieldOf("Best m/s")).toEqual([["speed", "best", "m/s"]]);
  expect(fieldOf("Mean (cm/s)")).toEqual([["speed", "mean", "cm/s"]]);
  expect(fieldOf("Old m/s")).toEqual([]);
  expect(fieldOf("Best kg")).toEqual([]);
});

test.each([
  ["Kilos", "load", "kg"],
  ["Pounds", "load", "lb"],
  ["m·s⁻¹", "speed", "m/s"],
  ["m.s-1", "speed", "m/s"],
])("a unit alone is a heading however it is written: %s", (heading, field, unit) => {
  const { fields } = recogniseHeader("Sets", [heading]);
  expect(Object.entries(fields).map(([of, column]) => [of, column.unit?.name])).toEqual([
    [field, unit],
  ]);
});

test("shortened headings of athletes and races are the plain ones", () => {
  const fields = (table: "Athletes" | "Races", ...row: readonly string[]) =>
    Object.keys(recogniseHeader(table, row).fields).sort();
  for (const sessions of ["Gym per week", "Gym a week", "Gym/week", "Lifts/wk", "Gym days"])
    expect(fields("Athletes", "Name", "Exp", sessions)).toEqual([
      "athlete",
      "experience",
      "sessions",
    ]);
  for (const matters of ["Prio", "Priorität"])
    expect(fields("Races", "Date", "Meeting", matters)).toEqual(["day", "matters", "race"]);
});
