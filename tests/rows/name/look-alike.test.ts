import { nameKey } from "../../../src/coaching/record/name-key";
import { checkNames } from "../../../src/rows/name/check-names";
import { hasDoubtfulLetters } from "../../../src/rows/name/doubtful-letters";
import { understandTable } from "../../../src/rows/read-table";
import { isBlank } from "../../../src/rows/value/blank";
import { sayRowIssue } from "../../../src/words/row-issues";

/** Signs without a picture (Unicode 15, default ignorable or format); each may come along with pasted text. */
const unseen = ["\u200B", "\u200C", "\u200D", "\u200E", "\u2060", "\u00AD", "\uFEFF", "\u0007"];

test.each(unseen)(
  "a sign nobody sees (%j) makes no second athlete, and the coach's text stays",
  (sign) => {
    const written = `To${sign}mas Reyerson${sign}`;
    expect(nameKey(written)).toBe(nameKey("Tomas Reyerson"));
    const { reading } = understandTable("Athletes", [
      ["Athlete", "Event"],
      [written, "800 m"],
      ["Tomas Reyerson", "800 m"],
    ]);
    expect(reading.records.map(({ row }) => row)).toEqual([2]);
    expect(reading.issues.map(({ code, cell }) => [code, cell])).toEqual([["athlete-twice", "A3"]]);
    // A byte-order mark at a text's end goes with the spaces there.
    const kept = sign === "\uFEFF" ? "" : sign;
    expect(reading.records[0]!.athlete).toContain(`To${kept}mas`);
    expect(checkNames([{ row: 2, athlete: written }], [{ athlete: "Tomas Reyerson" }])).toEqual([]);
  },
);

test("a name of nothing but unseen signs is a blank cell, reported where a name is needed", () => {
  expect(["\u200B", " \u2060\t", "\uFEFF"].map(isBlank)).toEqual([true, true, true]);
  expect(["0", "–", "é", "\u200Ba", "\u0301"].map(isBlank)).toEqual(Array(5).fill(false));
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Reps", "Load (kg)"],
    ["2026-06-02", "\u200B", "back squat", 5, 70],
  ]);
  expect(reading.records).toEqual([]);
  expect(reading.issues.map(({ code, cell }) => [code, cell])).toEqual([["needed-blank", "B2"]]);
});

test.each([
  ["another alphabet's letter in place of our own", "T\u043Emas Reyerson"],
  ["a sign that turns letters round", "Tomas\u202Enosreyer"],
  ["a sign that sets letters apart", "\u2067Tomas\u2069 Reyerson"],
])("%s is another athlete, and the coach is told that it may not look so", (_, name) => {
  expect(nameKey(name)).not.toBe(nameKey("Tomas Reyerson"));
  const { reading } = understandTable("Athletes", [
    ["Athlete", "Event"],
    ["Tomas Reyerson", "800 m"],
    [name, "800 m"],
  ]);
  expect(reading.records).toHaveLength(2);
  expect(reading.issues.map(({ code, cell, dropsRow }) => [code, cell, dropsRow])).toEqual([
    ["name-letters", "A3", false],
  ]);
  expect(sayRowIssue(reading.issues[0]!).whatToDo).toMatch(/^Type the name again by hand/);
});

test("a whole name in another alphabet is an ordinary name", () => {
  expect(
    ["Томас Рейерсон", "Θωμάς Ρέγιερσον", "Zoë Ångbrook", "Tomas Рейерсон"].map(hasDoubtfulLetters),
  ).toEqual(Array(4).fill(false));
});
