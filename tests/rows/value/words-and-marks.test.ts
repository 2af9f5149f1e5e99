import { runInNewContext } from "node:vm";
import { isBlank } from "../../../src/rows/value/blank";
import { isDitto } from "../../../src/rows/value/ditto";
import { foundText } from "../../../src/rows/value/found-text";
import { isDate } from "../../../src/rows/value/is-date";
import { minuteOfDay } from "../../../src/rows/value/minute-of-day";
import { saysNoValue } from "../../../src/rows/value/no-value";
import { yesNo } from "../../../src/rows/value/yes-no";

test("what a cell holds is said as it would be read aloud, cut short when long", () => {
  expect([null, undefined, "", 0, true, " a "].map(foundText)).toEqual([
    "",
    "",
    "",
    "0",
    "true",
    " a ",
  ]);
  expect(foundText(new Date(2026, 4, 2))).toBe("2026-05-02");
  expect(foundText(new Date(2026, 10, 12, 7, 5))).toBe("2026-11-12 07:05");
  expect(foundText(new Date(2026, 10, 12, 0, 1))).toBe("2026-11-12 00:01");
  expect(foundText("a".repeat(60))).toBe("a".repeat(60));
  expect(foundText("a".repeat(61))).toBe(`${"a".repeat(59)}…`);
});

test("a date is a date in whichever realm it was made, and a broken one is none", () => {
  const there = (code: string): unknown => runInNewContext(code);
  expect(isDate(there("new Date(2026, 4, 2)"))).toBe(true);
  expect(isDate(new Date(2026, 4, 2))).toBe(true);
  expect(isDate(there("new Date(NaN)"))).toBe(false);
  for (const none of [new Date(Number.NaN), {}, [], null, undefined, "2026-05-02", 46_154])
    expect(isDate(none)).toBe(false);
});

test.each([
  ["0:00", 0],
  ["23:59", 1439],
  ["18 : 05", 1085],
  ["18:05:30", 1085],
  ["6pm", 1080],
  ["6 p.m.", 1080],
  ["11.30 a.m.", 690],
  ["1 am", 60],
  ["12:10 AM", 10],
  ["12:10 pm", 730],
  ["7 H", 420],
  ["18 uhr", 1080],
  [" 18:00 ", 1080],
  [0, 0],
  [0.999_99, 0],
  [0.5007, 721],
] as const)("%p is minute %p of the day", (cell, minute) => {
  expect(minuteOfDay(cell)).toBe(minute);
});

test.each([
  "24:00",
  "12:60",
  "18:5",
  "at 18:00",
  "18:00 sharp",
  "118:00",
  "0 pm",
  "13 am",
  "h",
  -0.1,
  1,
  7.5,
  false,
])("%p is no time of day", (cell) => {
  expect(minuteOfDay(cell)).toBeNull();
});

test("marks for the cell above, for no value, and blanks, whatever their case and spaces", () => {
  for (const mark of [" Ditto ", "AS ABOVE", '"', "〃", "dto.", "idem"])
    expect(isDitto(mark)).toBe(true);
  expect(["dittos", "", 5, null].map(isDitto)).toEqual([false, false, false, false]);
  expect([" DNS ", "N/A", "–"].map(saysNoValue)).toEqual([true, true, true]);
  expect(["dnss", "", "0"].map(saysNoValue)).toEqual([false, false, false]);
  expect(["", null, undefined, " ", "\t\u00a0", "\u007f"].map(isBlank)).toEqual(
    Array(6).fill(true),
  );
  expect([0, false, "!", "~", " a"].map(isBlank)).toEqual(Array(5).fill(false));
});

test("yes and no in words, figures and ticks; what says neither stays open", () => {
  expect([true, 1, "Yes.", " ok! ", "✓", "1"].map(yesNo)).toEqual(Array(6).fill(true));
  expect([false, 0, "NO", "nein.", "☐", "0"].map(yesNo)).toEqual(Array(6).fill(false));
  expect([2, "x", "", "yes..", ".y", "no way", null, undefined].map(yesNo)).toEqual(
    Array(8).fill(null),
  );
});
