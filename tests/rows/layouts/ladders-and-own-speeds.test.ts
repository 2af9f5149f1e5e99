import { findTables } from "../../../src/rows/find-tables";
import { noSense } from "../../../src/rows/layout/shorthand/scheme-order";
import { setCell } from "../../../src/rows/layout/shorthand/set-cell";
import { understandTable } from "../../../src/rows/read-table";
import { problems, shortSet, today } from "./short";

// Several loads in one cell, and speeds beside their own sets; all figures are invented.

const inWords = (cell: unknown) => {
  const said = setCell(cell, noSense);
  if (said.is !== "sets") return said.is;
  const groups = said.groups.map(
    ({ load, unit, sets, reps }) => `${load}${unit?.name ?? ""}x${sets}x${reps}`,
  );
  return `${groups.join(" ")} @ ${said.speeds.map((speed) => speed ?? "-").join(" ")} (${said.note})`;
};

test.each([
  ["60/70/80", "60x1xnull 70x1xnull 80x1xnull @  ()"],
  ["60/70/80 x3", "60x1x3 70x1x3 80x1x3 @  ()"],
  ["60/72,5kg x3", "60kgx1x3 72.5kgx1x3 @  ()"],
  ["60/61.25/62.5", "60x1xnull 61.25x1xnull 62.5x1xnull @  ()"],
  ["60, 70, 80", "60x1xnull 70x1xnull 80x1xnull @  ()"],
  // Two loads may be a range, small numbers are none.
  ["60/70", "unread"],
  ["60 70", "unread"],
  ["6/7/8", "unread"],
  ["60 70 80 hard", "unread"],
  ["5@60 3@80", "60x1x5 80x1x3 @  ()"],
  ["3x5@80", "80x3x5 @  ()"],
  ["5@60%", "unread"],
  ["80/0.62", "80x1xnull @ 0.62 ()"],
  ["82,5kg/0,62", "82.5kgx1xnull @ 0.62 ()"],
  ["80/3.62", "unread"],
])("“%s” says %s", (cell, expected) => {
  expect(inWords(cell)).toBe(expected);
});

test.each([
  ["80x5 (0.62), 80x5 (.60), 80x4 F", "80x1x5 80x1x5 80x1x4 @ 0.62 0.6 - (F)"],
  ["60x5 70x5 80x5 .62", "60x1x5 70x1x5 80x1x5 @ - - 0.62 ()"],
  ["60x5 .75 70x5 .7 80x5", "60x1x5 70x1x5 80x1x5 @ 0.75 0.7 - ()"],
  // As many as there are sets are theirs in order, and so are repetitions of one set.
  ["60x5 70x5 80x5 .75 .7 .62", "60x1x5 70x1x5 80x1x5 @ 0.75 0.7 0.62 ()"],
  ["80x5 .62 .61 .6", "80x1x5 @ 0.62 0.61 0.6 ()"],
  [".62 80x5 85x5", "80x1x5 85x1x5 @ 0.62 ()"],
  ["80x5 (bar 0.5 off)", "80x1x5 @  (bar 0.5 off)"],
])("speeds keep to the sets they stand behind: “%s”", (cell, expected) => {
  expect(inWords(cell)).toBe(expected);
});

const log = (...rows: unknown[][]) =>
  understandTable("Sets", [["Date", "Athlete", "Lift", "Sets", "Reps", "Load", "m/s"], ...rows], {
    today,
  });
const day = new Date(2026, 4, 5);

test("loads, repetitions and speeds of a ladder in one row are its sets, one after another", () => {
  const { reading } = log(
    [day, "Ilka", "Squat", "", "5/5/4", "60/70/80", "0.75/0.68/0.62"],
    [day, "Bram", "Squat", 3, "5, 5, 4", 80, "0.62 0.6 0.55"],
    [day, "Ada", "Squat", 3, "5/5", 80, ""],
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 60x5 0.75",
    "05-05 Ilka 2 70x5 0.68",
    "05-05 Ilka 3 80x4 0.62",
    "05-05 Bram 1 80x5 0.62",
    "05-05 Bram 2 80x5 0.6",
    "05-05 Bram 3 80x4 0.55",
    "05-05 Ada 1 80x?",
    "05-05 Ada 2 80x?",
    "05-05 Ada 3 80x?",
  ]);
  expect(problems(reading)).toEqual(["E4 not-a-number: 5/5"]);
});

test("a log in which nearly every load is a ladder is one of several sets", () => {
  const { layout, reading } = understandTable("Sets", [
    ["Date", "Athlete", "Lift", "Load"],
    [day, "Ilka", "Squat", "60/70/80"],
    [day, "Bram", "Squat", "50/60/70"],
  ]);
  expect([layout, reading.records.length]).toEqual(["rows of several sets", 6]);
});

test("lifts across in shorthand are no diary, though notes or exertion stand beside them", () => {
  for (const beside of ["Notes", "RPE", "Type"]) {
    const cells = [
      ["Date", "Athlete", "Squat", beside],
      [day, "Ilka", "3x5 80", ""],
      [day, "Bram", "3x5 60", ""],
    ];
    const found = findTables([{ name: "Tuesday", cells }], { today });
    expect(
      found.map(({ table, understanding }) => [table, understanding.reading.records.length]),
    ).toEqual([["Sets", 6]]);
  }
});
