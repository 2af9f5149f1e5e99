import type { TabAnswers } from "../../../src/rows/layout/tab-answers";
import { understandTable } from "../../../src/rows/read-table";
import { problems, shortSet, today } from "./short";

// Speeds in columns headed by numbers alone, one row a lift; athletes, days and figures are invented.

type Line = readonly unknown[];
const first = [new Date(2026, 4, 5), "Ilka", "Squat"];
const second = [new Date(2026, 4, 7), "Ilka", "Squat"];
const five = [0.7, 0.69, 0.68, 0.66, 0.6];
const three = [0.6, 0.59, 0.58, "", ""];

const read = (headings: Line, rows: readonly Line[], tab: TabAnswers = {}) => {
  const cells = [["Date", "Athlete", "Lift", ...headings, 1, 2, 3, 4, 5], ...rows];
  const { reading, tabQuestions } = understandTable("Sets", cells, { today, tab });
  return [
    ...reading.records.map(shortSet),
    ...problems(reading),
    ...tabQuestions.map(({ about }) => about),
  ];
};

test.each<[string, Line, readonly Line[], readonly string[]]>([
  [
    "as many as the row's repetitions, five here and three there, are its repetitions",
    ["Reps", "kg"],
    [
      [...first, 5, 80, ...five],
      [...second, 3, 90, ...three],
    ],
    ["05-05 Ilka work 80x5 0.7 0.69 0.68 0.66 0.6", "05-07 Ilka work 90x3 0.6 0.59 0.58"],
  ],
  [
    "never as many as the repetitions are one a set",
    ["Reps", "kg"],
    [[...first, 5, 80, ...three]],
    ["05-05 Ilka 1 80x5 0.6", "05-05 Ilka 2 80x5 0.59", "05-05 Ilka 3 80x5 0.58"],
  ],
  [
    "one a set where a column counts the sets",
    ["Sets", "Reps", "kg"],
    [[...first, 3, 3, 80, ...three]],
    ["05-05 Ilka 1 80x3 0.6", "05-05 Ilka 2 80x3 0.59", "05-05 Ilka 3 80x3 0.58"],
  ],
  [
    "five beside five repetitions in every row may be either",
    ["Reps", "kg"],
    [
      [...first, 5, 80, ...five],
      [...second, 5, 90, ...five],
    ],
    ["F2 speeds-unsettled: 0.7", "F3 speeds-unsettled: 0.7", "speeds"],
  ],
  [
    "as many here, fewer there may be either",
    ["Reps", "kg"],
    [
      [...first, 5, 80, ...five],
      [...second, 5, 90, ...three],
    ],
    ["F2 speeds-unsettled: 0.7", "F3 speeds-unsettled: 0.6", "speeds"],
  ],
  [
    "without repetitions beside them may be either",
    ["kg"],
    [[...first, 80, ...five]],
    ["E2 speeds-unsettled: 0.7", "speeds"],
  ],
])("speeds under 1 to 5: %s", (_, headings, rows, told) => {
  expect(read(headings, rows)).toEqual(told);
});

test("what the coach says of them holds for every row; a row without speeds counts as ever", () => {
  const rows = [
    [...first, 80, ...three],
    [...second, 90, "", "", "", "", ""],
  ];
  expect(read(["kg"], rows, { speeds: "each rep" })).toEqual([
    "05-05 Ilka work 80x? 0.6 0.59 0.58",
    "05-07 Ilka work 90x?",
  ]);
  expect(read(["kg"], rows, { speeds: "each set" })).toEqual([
    "05-05 Ilka 1 80x? 0.6",
    "05-05 Ilka 2 80x? 0.59",
    "05-05 Ilka 3 80x? 0.58",
    "05-07 Ilka work 90x?",
  ]);
});
