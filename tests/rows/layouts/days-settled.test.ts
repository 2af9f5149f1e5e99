import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { DaySettler } from "../../../src/rows/layout/day-settler";
import type { DateOrder } from "../../../src/rows/value/day-text";
import { dayFromText } from "../../../src/rows/value/day-text";

const today = dayFromIso("2026-06-16")!;
type Given = {
  readonly titleYear?: number;
  readonly today?: number | null;
  readonly answered?: DateOrder;
};
/** What each of a tab's days is settled as: a day, or the code of what it lacks. */
function settled(texts: readonly string[], given: Given = {}): string[] {
  const days = texts.map((text) => dayFromText(text)!);
  const now = given.today === undefined ? today : given.today;
  const settler = new DaySettler(days, given.titleYear ?? null, now, given.answered ?? null);
  return days.map((text) => {
    const found = settler.settle(text);
    return "day" in found ? isoFromDay(found.day) : found.code;
  });
}

test("one day that has a month only one way round settles all days of the tab", () => {
  expect(settled(["5/6/2026", "28/5/2026"])).toEqual(["2026-06-05", "2026-05-28"]);
  expect(settled(["5/6/2026", "5/28/2026"])).toEqual(["2026-05-06", "2026-05-28"]);
});

test("where nothing settles it both days are named, and the coach's answer decides", () => {
  expect(settled(["5/6/2026", "7/6/2026"])).toEqual(Array(2).fill("date-order-unsettled"));
  expect(settled(["5/6/2026", "5/5/2026"])[1]).toBe("2026-05-05");
  expect(settled(["5/6/2026"], { answered: "month first" })).toEqual(["2026-05-06"]);
  expect(settled(["5/6/2026"], { answered: "day first" })).toEqual(["2026-06-05"]);
  // A day that can be read one way only is read so, whatever was said of the others.
  expect(settled(["28/5/2026"], { answered: "month first" })).toEqual(["2026-05-28"]);
});

test("days that contradict one another settle nothing, and each is read the only way it can be", () => {
  expect(settled(["28/5/2026", "5/28/2026", "5/6/2026"])).toEqual([
    "2026-05-28",
    "2026-05-28",
    "date-order-unsettled",
  ]);
});

test("whether a day without a year lies ahead is asked in the order of the tab, or in the only one", () => {
  // 9 January lies behind 16 June, 1 September ahead of it.
  expect(settled(["1/9"], { answered: "month first" })).toEqual(["2026-01-09"]);
  expect(settled(["1/9"], { answered: "day first" })).toEqual(["2025-09-01"]);
  expect(settled(["28/9"], { answered: "month first" })).toEqual(["2025-09-28"]);
  expect(settled(["9/28"], { answered: "day first" })).toEqual(["2025-09-28"]);
});

test("without a day asked about no day of the year has one", () => {
  expect(settled(["5 Jan", "5 Dec"], { today: null })).toEqual(["year-missing", "year-missing"]);
});

test("a day the calendar does not have is none, whichever way round", () => {
  expect(settled(["30 Feb 2026", "31/4/2026"])).toEqual(["not-a-day", "not-a-day"]);
  // Without a year the day cannot fall ahead of today either.
  expect(settled(["30 Feb"])).toEqual(["not-a-day"]);
});

test("a year is taken from another day, else the title, else today; without any it is asked for", () => {
  expect(settled(["12 May", "19 May 2025"])).toEqual(["2025-05-12", "2025-05-19"]);
  expect(settled(["12 May"], { titleYear: 2024 })).toEqual(["2024-05-12"]);
  expect(settled(["12 May"])).toEqual(["2026-05-12"]);
  expect(settled(["12 May"], { today: null })).toEqual(["year-missing"]);
});

test("days up to a fortnight ahead are this year's; a tab wholly beyond it is last year's", () => {
  expect(settled(["16 June", "30 June"])).toEqual(["2026-06-16", "2026-06-30"]);
  expect(settled(["1 Sept", "8 Sept"])).toEqual(["2025-09-01", "2025-09-08"]);
});

test("days all round the year leave the later ones without a year, and the earlier ones with it", () => {
  const months = [
    "Jan",
    "Feb",
    "Mar",
    "Apr",
    "May",
    "June",
    "July",
    "Aug",
    "Sept",
    "Oct",
    "Nov",
    "Dec",
  ];
  const found = settled(months.map((month) => `10 ${month}`));
  expect(found.slice(0, 6)).toEqual(
    ["01", "02", "03", "04", "05", "06"].map((month) => `2026-${month}-10`),
  );
  expect(new Set(found.slice(6))).toEqual(new Set(["year-missing"]));
});
