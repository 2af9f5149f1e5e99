import { writeSeason } from "../../../src/actions/season/write-season";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

// A made-up start of a season; which week is of which kind can be told by eye from a calendar.
const today = dayFromIso("2026-06-28")!;
const races = [
  ["Date", "Start", "Race", "Who", "Distance", "Matters"],
  ["2026-05-23", "10:00", "R2", "all", "10 km", "A"],
  ["2026-06-13", "14:00", "R3", "track", "1500 m", "B"],
];
const squad = (more: readonly (readonly string[])[] = []) =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Group"],
      ["Tomas Reyerson", "track"],
      ["Hamid Sorley", "marathon"],
    ],
    Races: [...races, ...more],
  });
/** Four weeks of races are seldom a whole season, and that is asked about. */
const asked = " Most are 16 to 20 weeks: is a race missing, or of another season?";
type Book = ReturnType<typeof squad>;
const season = (book: Book) => book.values(book.tabNamed("Season").id);
const cells = (book: Book) => season(book).slice(3);

test("weeks are columns from the first race to the last, athletes rows, races named", () => {
  const book = squad();
  expect(writeSeason(book, today).said).toBe(`Season: 4 weeks, 8 cells written.${asked}`);
  const monday = (value: unknown) => (value instanceof Date ? value.getDate() : value);
  expect(season(book)[2]!.map(monday)).toEqual(["Athlete", 18, 25, 1, 8]);
  expect(cells(book)).toEqual([
    ["Tomas Reyerson", "race week: R2 (A) 23 May", "week after", "·", "R3 (B) 13 Jun"],
    ["Hamid Sorley", "race week: R2 (A) 23 May", "week after", "·", "·"],
  ]);
});

test("writing again changes nothing and says so", () => {
  const book = squad();
  writeSeason(book, today);
  const before = book.all();
  expect(writeSeason(book, today).said).toBe(`Season: 4 weeks, nothing to change.${asked}`);
  expect(book.all()).toEqual(before);
});

test("what the coach typed, emptied, moved or put beside it stays", () => {
  const book = squad();
  writeSeason(book, today);
  book.type("Season", 4, 3, "camp");
  book.type("Season", 5, 4, "");
  book.type("Season", 9, 1, "Ask Hamid about July");
  book.insertColumn("Season", 2);
  book.type("Season", 4, 2, "my note");
  book.type("Races", 3, 6, "A");
  expect(writeSeason(book, today).said).toBe(
    `Season: 4 weeks, 1 cell written. Yours, kept: D4, E5.${asked}`,
  );
  expect(cells(book)[0]).toEqual([
    "Tomas Reyerson",
    "my note",
    "race week: R2 (A) 23 May",
    "camp",
    "·",
    "race week: R3 (A) 13 Jun",
  ]);
  expect(cells(book)[1]![4]).toBe("");
  expect(cells(book)[5]![0]).toBe("Ask Hamid about July");
});

test("a later race adds its weeks on the right, and an athlete a row below", () => {
  const book = squad();
  writeSeason(book, today);
  book.type("Races", 4, 1, "2026-06-20");
  ["12:00", "R4", "all", "5 km", "C"].forEach((value, i) => {
    book.type("Races", 4, i + 2, value);
  });
  book.type("Athletes", 4, 1, "Priya Tellander");
  book.type("Athletes", 4, 2, "track");
  expect(writeSeason(book, today).said).toBe(`Season: 5 weeks, 7 cells written.${asked}`);
  expect(cells(book).map((row) => [row[0], row[5]])).toEqual([
    ["Tomas Reyerson", "R4 (C) 20 Jun"],
    ["Hamid Sorley", "R4 (C) 20 Jun"],
    ["Priya Tellander", "R4 (C) 20 Jun"],
  ]);
});

test("another tab of that name, or an athlete in two rows, is refused and nothing is written", () => {
  const other = squad();
  other.alone(() => other.addTab("Season"));
  other.type("Season", 1, 1, "Long runs");
  const before = other.all();
  expect(() => writeSeason(other, today)).toThrow(/no row with the heading “Athlete”.*Nothing/);
  expect(other.all()).toEqual(before);
  const twice = squad();
  writeSeason(twice, today);
  twice.type("Season", 8, 1, "Tomas Reyerson");
  const standing = twice.all();
  expect(() => writeSeason(twice, today)).toThrow(/rows 4 and 8/);
  expect(twice.all()).toEqual(standing);
});

test("without athletes or races a sentence says what is missing", () => {
  expect(() => writeSeason(memoryWorkbook({ Races: races }), today)).toThrow("Athletes tab");
  const athletes = [["Athlete"], ["Tomas Reyerson"]];
  expect(() => writeSeason(memoryWorkbook({ Athletes: athletes }), today)).toThrow("Races tab");
});

test("a writing that fails at any one call is completed by writing again", () => {
  const whole = squad();
  writeSeason(whole, today);
  const calls = whole.calls.length;
  expect(calls).toBeGreaterThan(10);
  for (let at = 1; at <= calls; at++) {
    const book = squad();
    book.failAt = at;
    expect(() => writeSeason(book, today)).toThrow("The platform failed");
    book.failAt = Number.POSITIVE_INFINITY;
    writeSeason(book, today);
    expect(cells(book)).toEqual(cells(whole));
    expect(writeSeason(book, today).said).toBe(`Season: 4 weeks, nothing to change.${asked}`);
  }
});

test("a season of 16 to 20 weeks is written without a question", () => {
  // From Monday 18 May the race of 12 September lies in the seventeenth week.
  const book = squad([["2026-09-12", "14:00", "R5", "all", "10 km", "A"]]);
  expect(writeSeason(book, today).said).toBe("Season: 17 weeks, 34 cells written.");
});
