import { dayFromIso } from "../../../src/coaching/calendar/day";
import { dayOfCell } from "../../../src/rows/value/day-of-cell";
import { dayFromText, settleDay, weekdayOfWord } from "../../../src/rows/value/day-text";

/** Date and month as a reader who puts the day first understands them, year and minute where written. */
const short = (text: string) => {
  const day = dayFromText(text);
  if (day === null) return null;
  const [date, month] = day.pair ?? [day.date, day.month];
  return [`${date}/${month}`, day.year ?? "", day.minute ?? "", day.weekday ?? ""].join(" ").trim();
};

test.each([
  ["2026/04/07 7:01:22 am GMT+1", 7 * 60 + 1],
  ["2026/04/07 7:01:22 pm GMT+01:00", 19 * 60 + 1],
  ["4/7/2026 12:30 PM", 12 * 60 + 30],
  ["am 7.4.2026 18:00 UTC", 18 * 60],
  ["4/7/2026 12:30 AM", 30],
  ["4/7/2026, 12:30 a.m.", 30],
  ["4/7/2026 6:30 p.m.", 18 * 60 + 30],
  ["2026/04/07 12:01:22 AM GMT+1", 1],
  ["12:30 am 4/7/2026", 30],
  // "On", in German.
  ["um 12:30 am 7.4.2026", 12 * 60 + 30],
  ["12:30 am 7. April 2026", 12 * 60 + 30],
  ["2026-04-07T18:30:00+02:00", 18 * 60 + 30],
  ["2026-04-07 18:30-0500", 18 * 60 + 30],
])("a form's day with its time and zone is read: %s", (text, minute) => {
  expect(dayFromText(text)).toMatchObject({ year: 2026, minute });
});

test.each([
  ["12 May 26", "12/5 2026"],
  ["12th May 2026", "12/5 2026"],
  ["1st of May, 2026", "1/5 2026"],
  ["2nd May", "2/5"],
  ["3rd-May-26", "3/5 2026"],
  ["12May2026", "12/5 2026"],
  ["12 Dez. 2026", "12/12 2026"],
  ["12.Mai.2026", "12/5 2026"],
  ["May 12th, 2026", "12/5 2026"],
  ["May. 12 26", "12/5 2026"],
  ["may12", "12/5"],
  ["MÄR 3rd", "3/3"],
  ["6 abr 2026", "6/4 2026"],
  ["May 12. 2026", "12/5 2026"],
  ["Sunday 17th May '26", "17/5 2026  6"],
  ["17 May ’26 10:30", "17/5 2026 630"],
  ["17/5/'26", "17/5 2026"],
  ["May '26", null],
  ["45'30", null],
])("“%s” names its month: %s", (text, read) => {
  expect(short(text)).toBe(read);
});

test.each([
  ["12/5/26", "12/5 2026"],
  ["12-5-2026", "12/5 2026"],
  ["12.5.26", "12/5 2026"],
  ["12/5/", "12/5"],
  ["12.5.", "12/5"],
  ["2026.5.1", "1/5 2026"],
  ["2026/12/05", "5/12 2026"],
])("“%s” is figures alone: %s", (text, read) => {
  expect(short(text)).toBe(read);
});

test.each([
  ["2026-05-12T18:05", "12/5 2026 1085"],
  ["2026-05-12 18:05:30", "12/5 2026 1085"],
  ["2026-05-12T18:05:30.250Z", "12/5 2026 1085"],
  ["2026-05-12T18:05Z", "12/5 2026 1085"],
  ["2026-05-12T18:05:30", "12/5 2026 1085"],
  [" 2026-05-12T18:05 ", "12/5 2026 1085"],
  ["12/5 18h", "12/5  1080"],
  ["12/5 18H30", "12/5  1110"],
  ["Tues., 12 May um 18:05", "12/5  1085 1"],
  ["Tue 12 May - PM", "12/5   1"],
  ["12 May — am, Tue", "12/5   1"],
  ["the 12th of May", "12/5"],
])("“%s” has a time or a weekday beside it: %s", (text, read) => {
  expect(short(text)).toBe(read);
});

test.each([
  "on 2026-05-12T18:05",
  "2026-05-12T18:05 sharp",
  "12026-05-12",
  "2026-05-123",
  "112/5",
  "12/5.26",
  "12/5/20261",
  "12-5-",
  "12.5",
  "12 May exam",
  "12 May amber",
  "12 May 18:05 19:00",
  "Mon Tue 12 May",
  "12 Smarch",
  "no 12 May",
  "12 May 2026 late",
  "112 May",
  "at May 12",
  "May 12 late",
  "May 122026",
  "12 May 26:70",
  "12 May 6pm",
])("“%s” is no day", (text) => {
  expect(short(text)).toBeNull();
});

test("forty signs may hold a day, more are a note", () => {
  const longest = "Wednesday, the 23rd of September, 2026 pm";
  expect(longest).toHaveLength(41);
  expect(short(longest)).toBeNull();
  expect(short(longest.replace(", 2026", " 2026"))).toBe("23/9 2026  2");
});

test("weekdays by their short and long words, with or without a point", () => {
  const words = ["Mon", "tues.", "MITTWOCH", "Thur", "fr", "sat.", "Sonntag"];
  expect(words.map(weekdayOfWord)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  expect(["m", "mon..", "fr.i", "funday"].map(weekdayOfWord)).toEqual(Array(4).fill(null));
});

test("only figures with points between say that the day stands first", () => {
  expect(
    ["12.5.26", "12/5/26", "12-5-26", "12 May", "2026-05-12"].map(
      (text) => dayFromText(text)?.dotted,
    ),
  ).toEqual([true, false, false, false, false]);
});

test("the year given counts only where none is written", () => {
  const settled = (text: string, order: "day first" | "month first") =>
    settleDay(dayFromText(text)!, order, 2025);
  expect(settled("5/12", "day first")).toBe(dayFromIso("2025-12-05"));
  expect(settled("5/12", "month first")).toBe(dayFromIso("2025-05-12"));
  expect(settled("5/12/26", "day first")).toBe(dayFromIso("2026-12-05"));
  expect(settled("5/12/26", "month first")).toBe(dayFromIso("2026-05-12"));
  expect(settled("12 May", "month first")).toBe(dayFromIso("2025-05-12"));
  expect(settled("12 May 26", "month first")).toBe(dayFromIso("2026-05-12"));
  expect(settled("13/14", "day first")).toBeNull();
});

test("a real date is its own day; a number, a blank and a broken date are none", () => {
  expect(dayOfCell(new Date(2026, 4, 2, 18, 5))).toEqual({
    pair: null,
    year: 2026,
    month: 5,
    date: 2,
    weekday: null,
    dotted: false,
    minute: null,
  });
  expect(dayOfCell("12 May")).toMatchObject({ month: 5, date: 12 });
  // The spreadsheet's third day, no longer a time.
  expect(dayOfCell(new Date(1900, 0, 1))).toMatchObject({ year: 1900, month: 1, date: 1 });
  const yearTwentySix = new Date(2026, 4, 2);
  yearTwentySix.setFullYear(26);
  for (const none of [
    yearTwentySix,
    "",
    "  ",
    46_154,
    null,
    true,
    new Date(Number.NaN),
    new Date(20, 0, 1).getTime(),
    // A time of day, as the spreadsheet hands it over.
    new Date(1899, 11, 30, 17, 30),
  ])
    expect(dayOfCell(none)).toBeNull();
});

// Names of months and days of the week in seven further languages, from memory of their calendars.
test.each([
  ["lundi 8 juin 2026", "8/6 2026  0"],
  ["1er août", "1/8"],
  ["9 de junio de 2026", "9/6 2026"],
  ["miércoles 10 junio", "10/6   2"],
  ["sabato 13 giugno", "13/6   5"],
  ["13 de março", "13/3"],
  ["za 13 mei", "13/5   5"],
  ["lördag 13 juni", "13/6   5"],
  ["tirsdag den 9. juni", "9/6   1"],
  ["13 déc. 2026", "13/12 2026"],
])("“%s” is read in its own language: %s", (text, read) => {
  expect(short(text)).toBe(read);
});

test.each(["set 3", "out 5", "Sam 12", "Dom 3", "ago 4"])("“%s” is no day", (text) => {
  expect(dayFromText(text)).toBeNull();
});
