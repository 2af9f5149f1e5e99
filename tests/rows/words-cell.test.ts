import { wordsCell } from "../../src/rows/words-cell";

const grid = [
  ["Athlete", "12 May", "14 May", "19 May", "kg"],
  ["Ilka Brandmoor", "calf pain", "80x5x3", " ill ", 52],
];
const found = (text: string, column: number) =>
  wordsCell(grid, { row: 2, column, text, beside: "set" });

test("words of pain or absence are found in the cell they are expected in, else in the one that says them", () => {
  expect(found("ill", 4)).toEqual({ cell: "D2", words: "ill" });
  expect(found("calf pain", 3)).toEqual({ cell: "B2", words: "calf pain" });
  // Joined from several cells, the latest day stands right.
  expect(found("calf pain; ill", 3)).toEqual({ cell: "D2", words: "ill" });
  // The one expected says it itself.
  expect(found("calf pain; ill", 2)).toEqual({ cell: "B2", words: "calf pain" });
  // A part of what its cell says, which stands before other words.
  expect(found("calf", 3)).toEqual({ cell: "B2", words: "calf pain" });
});

test("where no cell says it by itself, as a yes under a heading, it is the one expected", () => {
  const ticked = [
    ["Athlete", "Pain?"],
    ["Ilka Brandmoor", "yes"],
  ];
  const of = { row: 2, column: 2, text: "pain", beside: "diary" } as const;
  expect(wordsCell(ticked, of)).toEqual({ cell: "B2", words: "pain" });
});
