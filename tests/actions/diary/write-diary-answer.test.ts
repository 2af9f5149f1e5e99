import { serveRequest } from "../../../src/actions/requests";
import { memoryWorkbook } from "../memory-workbook";

// Invented rows of the invented club; the note stands in column F until a test moves it.
const heads = ["Date", "Athlete", "Sleep (h)", "Soreness", "Mood", "Note", "Private?"];
const notebook = (...rows: readonly (readonly unknown[])[]) => {
  const typed = [
    heads,
    ["2026-05-19", "Priya Tellander", 7.5, 3, 6, "", ""],
    ["2026-05-19", "Tomas Reyerson", 6, 3, 5, "late train ", ""],
    ["2026-05-21", "Priya Tellander", 5, 4, 4, "", ""],
    ...rows,
  ];
  return memoryWorkbook({ Diary: typed });
};
const answer = (
  book: ReturnType<typeof notebook>,
  part: Readonly<Record<string, string>> = {},
): string => {
  const message = {
    today: "2026-06-28",
    athlete: "Priya Tellander",
    day: "2026-05-21",
    answer: "exam the day before",
    ...part,
  };
  return (serveRequest(book, "writeDiaryAnswer", message) as { said: string }).said;
};
const notes = (book: ReturnType<typeof notebook>, column = 6) =>
  book.values(book.tabNamed("Diary").id).map((row) => row[column - 1]);
const tomas = { athlete: "Tomas Reyerson", day: "2026-05-19" };

test("an answer goes into the blank note of that athlete's row of that day, and nowhere else", () => {
  const book = notebook();
  expect(answer(book)).toBe("Diary F4: the answer is written. Undo takes it back.");
  expect(notes(book)).toEqual(["Note", "", "late train ", "exam the day before"]);
  expect(book.calls.filter((call) => call === "alone")).toHaveLength(1);
  expect(book.calls.filter((call) => call === "write")).toHaveLength(1);
});

test("the coach's own words stay to the letter, the answer follows them", () => {
  const book = notebook();
  answer(book, tomas);
  expect(notes(book)[2]).toBe("late train ; exam the day before");
  answer(book, { ...tomas, answer: "  new\n shoes " });
  expect(notes(book)[2]).toBe("late train ; exam the day before; new shoes");
});

test("the same answer again is not written twice", () => {
  const book = notebook();
  answer(book, tomas);
  const before = book.all();
  expect(answer(book, tomas)).toBe("Diary F3: the answer stands there already.");
  expect(book.all()).toEqual(before);
});

test("the note column is found by its heading wherever it stands, the row wherever it is sorted", () => {
  const book = notebook();
  book.insertColumn("Diary", 3);
  book.sortRows("Diary", 2, (row) => String(row[1]).split("").reverse().join(""));
  const said = answer(book);
  const { row, column } = /Diary (?<column>[A-Z]+)(?<row>\d+)/.exec(said)!.groups!;
  expect(column).toBe("G");
  const line = book.values(book.tabNamed("Diary").id)[Number(row) - 1]!;
  expect([line[0], line[1], line[6]]).toEqual([
    "2026-05-21",
    "Priya Tellander",
    "exam the day before",
  ]);
});

test("text that begins like a formula stays text", () => {
  const book = notebook();
  answer(book, { answer: '=HYPERLINK("x")' });
  const { id } = book.tabNamed("Diary");
  expect([book.values(id)[3]![5], book.formulas(id)[3]![5]]).toEqual(['=HYPERLINK("x")', ""]);
});

test("of two rows of a day the later is answered, and never a private one while another is there", () => {
  const evening = ["2026-05-21", "Priya Tellander", "", "", 3, "tired", ""];
  const hidden = ["2026-05-21", "Priya Tellander", "", "", 2, "a private word", "y"];
  const book = notebook(evening, hidden);
  expect(answer(book)).toContain("Diary F5");
  expect(notes(book).slice(3)).toEqual(["", "tired; exam the day before", "a private word"]);
});

test.each([
  [
    "no row that day",
    notebook(),
    { day: "2026-05-20" },
    "Diary has no row of Priya Tellander on 20 May. Add one there",
  ],
  ["another athlete's row only", notebook(), { athlete: "Kofi Anstruther" }, "no row of Kofi"],
  ["nothing typed", notebook(), { answer: "  " }, "There is no answer to write."],
  ["no Diary", memoryWorkbook({ Notes: [["Shopping"]] }), {}, "No Diary was found. Open Set up"],
  [
    "no column for notes",
    memoryWorkbook({
      Diary: [heads.slice(0, 5), ["2026-05-21", "Priya Tellander", 5, 4, 4]],
    }),
    {},
    "Diary has no column for notes. Add one headed “Note”",
  ],
  [
    "a number in the note",
    notebook(["2026-05-22", "Priya Tellander", 7, 3, 5, 58, ""]),
    { day: "2026-05-22" },
    "Diary F5 holds a number or a date",
  ],
])("%s is refused in a sentence, and nothing changes", (_, book, part, sentence) => {
  const before = book.all();
  expect(() => answer(book, part as Record<string, string>)).toThrow(sentence);
  expect(book.all()).toEqual(before);
});

test("a formula of the coach's is never written over", () => {
  const book = notebook();
  book.type("Diary", 4, 6, "5 h", '=C4&" h"');
  expect(() => answer(book)).toThrow("Diary F4 is worked out by a formula.");
  expect(book.formulas(book.tabNamed("Diary").id)[3]![5]).toBe('=C4&" h"');
});

test("a cell that is full is refused whole, not cut short", () => {
  const book = notebook();
  book.type("Diary", 4, 6, "x".repeat(49_990));
  expect(() => answer(book)).toThrow("Diary F4 is full.");
  expect(notes(book)[3]).toHaveLength(49_990);
});

test("whichever call fails, the note is as before or whole, and asking again completes it once", () => {
  const whole = notebook();
  answer(whole, tomas);
  const calls = whole.calls.length;
  expect(calls).toBeGreaterThan(4);
  for (let failAt = 1; failAt <= calls; failAt++) {
    const book = notebook();
    const before = book.all();
    book.failAt = failAt;
    expect(() => answer(book, tomas)).toThrow("The platform failed");
    book.failAt = Number.POSITIVE_INFINITY;
    expect([before, whole.all()]).toContainEqual(book.all());
    answer(book, tomas);
    expect(book.all()).toEqual(whole.all());
  }
});
