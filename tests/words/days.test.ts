import { dayFromIso } from "../../src/coaching/calendar/day";
import { datedDay, dayWords, longDay, weekdayWords } from "../../src/words/days";
import { sayRowIssue } from "../../src/words/row-issues";
import { issue } from "./invented-issue";

// 4 May 2026 is a Monday.
const days = Array.from({ length: 7 }, (_, at) => dayFromIso("2026-05-04")! + at);

test("a day is said short in a line, long at the head of a page", () => {
  const day = dayFromIso("2026-06-30")!;
  expect([dayWords, weekdayWords, longDay, datedDay].map((say) => say(day))).toEqual([
    "30 Jun",
    "Tue 30 Jun",
    "30 June",
    "Tue 30 June 2026",
  ]);
});

test("a questioned weekday has the very name that stands before the day", () => {
  for (const [weekday, day] of days.entries()) {
    const said = sayRowIssue(issue("weekday-questioned", { weekday })).whyItMatters;
    const [, name = ""] = /trained on a (\w+)\./.exec(said) ?? [];
    expect(weekdayWords(day).slice(0, 3)).toBe(name.slice(0, 3));
    expect(name).toMatch(/day$/);
  }
});
