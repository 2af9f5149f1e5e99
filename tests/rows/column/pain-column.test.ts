import { understandTable } from "../../../src/rows/read-table";

/** The notes of diary rows whose answers stand under such a heading; the athlete and days are invented. */
const notes = (heading: string, ...answers: readonly unknown[]) => {
  const { reading, questions } = understandTable("Diary", [
    ["Date", "Athlete", heading, "Note"],
    ...answers.map((answer, at) => [`2026-05-${at + 10}`, "Ilka Brandmoor", answer, ""]),
  ]);
  expect([reading.issues, questions]).toEqual([[], []]);
  return reading.records.map(({ note }) => note);
};

test("what hurts stands in the note behind the heading's words; that nothing does, nowhere", () => {
  expect(
    notes(
      "Any pain or injury?",
      "left calf",
      "no",
      "None.",
      "",
      false,
      "-",
      true,
      "all good",
      0,
      5,
    ),
  ).toEqual([
    "Any pain or injury?: left calf",
    ...["", "", "", "", ""],
    "Any pain or injury?: yes",
    ...["", ""],
    "Any pain or injury?: 5",
  ]);
});

test("a smile or a stop behind it leaves a no a no, and a pain a pain", () => {
  expect(notes("Any pain?", "keine 🙂", "No!", "nothing 👍🏻", "no…", "calf 😬")).toEqual([
    ...["", "", "", ""],
    "Any pain?: calf 😬",
  ]);
});

test("“ill” is the answer of a column of illness, and “no, but tight” is no denial", () => {
  expect(notes("Illness", "ill", "sick", "no, but tight")).toEqual([
    "ill",
    "sick",
    "Illness: no, but tight",
  ]);
});

test("on a scale that does not end at ten its end is told", () => {
  expect(notes("Pain (1-5)", 3, 1, "0/5")).toEqual(["Pain (1-5): 3 of 5", "Pain (1-5): 1", ""]);
  expect(notes("Pain 0-10", 3)).toEqual(["Pain 0-10: 3"]);
  // Halves, too.
  expect(notes("Pain (1-5)", 2.5, "2,5")).toEqual(["Pain (1-5): 2.5 of 5", "Pain (1-5): 2,5 of 5"]);
});

test("beside a note both are kept; a heading that names no pain says so by the column's meaning", () => {
  const { reading } = understandTable(
    "Diary",
    [
      ["Date", "Athlete", "Body check", "Note"],
      ["2026-05-10", "Ilka Brandmoor", "shin", "late train"],
    ],
    { answers: { columns: [{ column: 3, field: "pain" }] } },
  );
  expect(reading.records[0]!.note).toBe("pain: shin; late train");
});

test("an answer that speaks of pain or illness itself stands without the heading's words", () => {
  expect(notes("Anything hurting or ill?", "sharp pain in left shin", "left shin")).toEqual([
    "sharp pain in left shin",
    "Anything hurting or ill?: left shin",
  ]);
});
