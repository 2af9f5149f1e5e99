import { findTables } from "../../../src/rows/find-tables";
import { setsUnderDate } from "../../../src/rows/layout/wide/sets-under-date";
import type { Reading } from "../../../src/rows/reading";
import { notes, problems, shortJump, shortSet, today } from "./short";

// Dates over columns of their own for lifts, sets or tries; athletes and figures are invented.

const found = (name: string, ...cells: unknown[][]) =>
  findTables([{ name, cells }], { today }).map(({ table, understanding }) => ({
    table,
    reading: understanding.reading as Reading<never>,
    asks: understanding.tabQuestions.map(({ about }) => about),
    columns: understanding.questions.map(({ heading }) => heading),
  }));
const dates = (...under: (string | number)[]) => {
  const blank = under.slice(1).map(() => "");
  return [
    ["", "Mon 13 Apr 2026", ...blank, "Thu 16 Apr 2026", ...blank],
    ["Name", ...under, ...under],
  ];
};

test("sets numbered under each date are sets of that day; words under merged cells are none", () => {
  for (const under of [
    ["Set 1", "Set 2", "Set 3"],
    [1, 2, 3],
  ]) {
    const [sets, ...others] = found(
      "Squat",
      ...dates(...under),
      ["Ilka", 80, 80, 82.5, "ill", "", ""],
      ["Kofi", 100, 100, "", 100, 102.5, 100],
    );
    expect([sets!.table, others]).toEqual(["Sets", []]);
    expect(sets!.reading.records.map(shortSet)).toEqual([
      "04-13 Ilka work 80x?",
      "04-13 Ilka work 80x?",
      "04-13 Ilka work 82.5x?",
      "04-13 Kofi work 100x?",
      "04-13 Kofi work 100x?",
      "04-16 Kofi work 100x?",
      "04-16 Kofi work 102.5x?",
      "04-16 Kofi work 100x?",
    ]);
    expect([problems(sets!.reading), notes(sets!.reading)]).toEqual([[], ["E3 Ilka: ill"]]);
  }
});

test("lifts under each date, alone or with their figures, are read for every date", () => {
  const [alone] = found("April", ...dates("Squat", "RDL"), ["Ilka", 80, 50, 82.5, "sick"]);
  const named = ({ exercise }: { exercise: string }) => exercise;
  expect(alone!.table).toBe("Sets");
  expect(alone!.reading.records.map((set) => `${shortSet(set)} ${named(set)}`)).toEqual([
    "04-13 Ilka work 80x? Squat",
    "04-13 Ilka work 50x? RDL",
    "04-16 Ilka work 82.5x? Squat",
  ]);
  const [figures] = found("April", ...dates("Squat kg", "Squat m/s", "RDL kg", "RDL m/s"), [
    "Ilka",
    80,
    0.61,
    50,
    "",
    82.5,
    0.6,
    50,
    0.8,
  ]);
  expect(figures!.reading.records.map((set) => `${shortSet(set)} ${named(set)}`)).toEqual([
    "04-13 Ilka work 80x? 0.61 Squat",
    "04-13 Ilka work 50x? RDL",
    "04-16 Ilka work 82.5x? 0.6 Squat",
    "04-16 Ilka work 50x? 0.8 RDL",
  ]);
});

test("kilograms, repetitions or speeds under dates are no heights of jumps; the lift is asked for", () => {
  const [sets, ...others] = found("Sq", ...dates("kg", "m/s"), ["Ilka", 80, 0.61, 82.5, 0.6]);
  expect([sets!.table, sets!.asks, others]).toEqual(["Sets", ["exercise"], []]);
  expect(sets!.reading.records).toEqual([]);
  for (const under of [
    ["Set 1", "Set 2"],
    ["3x5 kg", "top speed"],
    ["lb", "reps"],
  ])
    for (const { table } of found("Sq", ...dates(...under), ["Ilka", 5, 5, 5, 5]))
      expect(table).toBe("Sets");
});

test("tries numbered under each date are jumps of that day", () => {
  for (const under of [
    ["Try 1", "Try 2"],
    [1, 2],
  ]) {
    const [jumps] = found("CMJ cm", ...dates(...under), ["Ilka", 31, 30.5, "-", 32]);
    expect(jumps!.table).toBe("Jumps");
    expect(jumps!.reading.records.map(shortJump)).toEqual([
      "04-13 Ilka 31 cm",
      "04-13 Ilka 30.5 cm",
      "04-16 Ilka 32 cm",
    ]);
  }
});

test("a jump under a date is no lift, and is asked about", () => {
  const [lifts] = found("Squat", ...dates("kg", "CMJ cm"), ["Ilka", 80, 30.5, 80, 32]);
  expect([lifts!.table, lifts!.columns]).toEqual(["Sets", ["CMJ cm"]]);
});

test("a lift alone heads loads only where loads or sets of them stand below it", () => {
  const under = (...below: unknown[]) =>
    setsUnderDate([["Squat"], ...below.map((cell) => [cell])], {
      row: 0,
      column: 0,
      end: below.length + 1,
    });
  const load = { field: "load", unit: null, exercise: "Squat" };
  expect(under(80, "", "ill", "5x80")).toEqual(load);
  expect(under(80, 0.62)).toBeNull();
  expect(under("12/5")).toBeNull();
});
