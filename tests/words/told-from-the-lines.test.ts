import { rowsUnusedWords } from "../../src/words/row-check";
import { lineReasonWords } from "../../src/words/week";
import { setsCutWords, weekNoteWords } from "../../src/words/week-notes";

test("what a race week leaves of the sets is told from the lines, each number once", () => {
  const cuts = [
    { from: 5, to: 2 },
    { from: 3, to: 2 },
    { from: 3, to: 2 },
  ];
  expect(weekNoteWords.racing(3, cuts)).toBe(
    "3 athletes in race week: 3 sets become 2, 5 become 2.",
  );
  expect(weekNoteWords.racing(1, [])).toBe("1 athlete in race week.");
  expect(setsCutWords([{ from: 11, to: 5 }])).toBe(": 11 sets become 5");
});

test("rows that were not read and rows of nobody are counted together, each with its reason", () => {
  expect(rowsUnusedWords(3397, { notRead: 1, ofNobody: 1 })).toBe(
    "2 of 3397 rows were not used: 1 not read, 1 under a name that is not among the athletes.",
  );
  expect(rowsUnusedWords(12, { notRead: 1, ofNobody: 0 })).toBe(
    "1 of 12 rows was not used: 1 not read.",
  );
  expect(rowsUnusedWords(12, { notRead: 0, ofNobody: 0 })).toBe("");
});

test.each([
  [{ fromKg: 95, toKg: 85 }, "Down from 95 to 85 kg"],
  [{ fromKg: 50, toKg: 50 }, "At 50 kg"],
  [{}, "No more load"],
])("a load that keeps two repetitions in reserve is named: %p", (facts, start) => {
  expect(lineReasonWords({ code: "reserve-short", facts })).toBe(
    `${start}: more would leave fewer than two repetitions in reserve.`,
  );
});
