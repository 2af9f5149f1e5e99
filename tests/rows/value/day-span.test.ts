import { isoFromDay } from "../../../src/coaching/calendar/day";
import { spanFromText } from "../../../src/rows/value/day-span";
import { settleDay } from "../../../src/rows/value/day-text";

const days = (text: string) =>
  spanFromText(text)?.map((day) => day && isoFromDay(settleDay(day, "day first", 2026)!)) ?? null;

test.each([
  ["12–14 June", "2026-06-12", "2026-06-14"],
  ["12 - 14 June 2025", "2025-06-12", "2025-06-14"],
  ["June 12 – June 14", "2026-06-12", "2026-06-14"],
  ["8.–21.6.2026", "2026-06-08", "2026-06-21"],
  ["8.6.-21.6.", "2026-06-08", "2026-06-21"],
  ["20./21. Juni", "2026-06-20", "2026-06-21"],
  ["27 June to 3 July", "2026-06-27", "2026-07-03"],
  ["from 1 June until 5 June", "2026-06-01", "2026-06-05"],
  ["Sat 27–Sun 28 June", "2026-06-27", "2026-06-28"],
  ["Sat. 27–Sun. 28 June", "2026-06-27", "2026-06-28"],
  ["20th & 21st June", "2026-06-20", "2026-06-21"],
  ["2026-06-12 - 2026-06-14", "2026-06-12", "2026-06-14"],
  ["1/6-3/6", "2026-06-01", "2026-06-03"],
  ["27 Dec – 3 Jan 2027", "2026-12-27", "2027-01-03"],
  ["30 Dec – 31 Dec 2027", "2027-12-30", "2027-12-31"],
])("“%s” is from %s to %s", (text, from, until) => {
  expect(days(text)).toEqual([from, until]);
});

test("a first day alone leaves the span open", () => {
  expect(days("from 1 June")).toEqual(["2026-06-01", null]);
  expect(days("ab 1. Juni")).toEqual(["2026-06-01", null]);
});

test.each([
  "12 June",
  "2026-06-12",
  "12/6/2026",
  "2-3",
  "12-14/6",
  "race 12–14 June",
  "heats 12–14 June",
  "x12-14 June",
  "12 laps – 14 June",
  "June",
])("“%s” is no span", (text) => {
  expect(spanFromText(text)).toBeNull();
});
