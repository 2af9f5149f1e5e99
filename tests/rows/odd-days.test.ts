import { dayFromIso, isoFromDay } from "../../src/coaching/calendar/day";
import { oddDays } from "../../src/rows/table/odd-days";
import { problems } from "./layouts/short";
import { readSets } from "./readers";

const head = ["Date", "Athlete", "Exercise", "Set", "Load"];
/** Tuesdays and Thursdays from 7 April 2026 on, as real dates. */
const season = Array.from({ length: 20 }, (_, at) => {
  const date = new Date(2026, 3, 7 + 7 * Math.floor(at / 2) + 2 * (at % 2));
  return [date, "Ilka", "squat", 1, 65];
});

test("a real date months away from all others is questioned, with day and month swapped as the mend", () => {
  const reading = readSets([head, ...season, [new Date(2026, 11, 5), "Ilka", "squat", 1, 65]]);
  expect(problems(reading)).toEqual(["A22 day-questioned: 2026-12-05"]);
  expect(reading.issues[0]).toMatchObject({ facts: { mend: "2026-05-12" }, dropsRow: false });
  expect(reading.rowsRead).toBe(21);
});

test("a wrong year is questioned without a mend", () => {
  const reading = readSets([head, ...season, [new Date(2062, 4, 14), "Ilka", "squat", 2, 65]]);
  expect(reading.issues.map(({ code, facts }) => [code, facts.mend])).toEqual([
    ["day-questioned", undefined],
  ]);
});

test("the only Monday ever, a usual Thursday when swapped, is questioned; an odd Monday alone is not", () => {
  // 6 April 2026 is a Monday, 4 June a Thursday; 20 April is a Monday and cannot be swapped.
  const questioned = readSets([head, ...season, [new Date(2026, 3, 6), "Ilka", "squat", 2, 65]]);
  expect(questioned.issues.map(({ code, facts }) => [code, facts.weekday, facts.mend])).toEqual([
    ["weekday-questioned", 0, "2026-06-04"],
  ]);
  const alone = readSets([head, ...season, [new Date(2026, 3, 20), "Ilka", "squat", 2, 65]]);
  expect(alone.issues).toEqual([]);
});

test("a season without odd days asks nothing, and a few days never do", () => {
  expect(readSets([head, ...season]).issues).toEqual([]);
  expect(
    readSets([head, ...season.slice(0, 2), [new Date(2027, 3, 7), "Ilka", "squat", 1, 65]]).issues,
  ).toEqual([]);
});

test("an odd day met twice is questioned where it is met first, with all its rows", () => {
  const odd = (set: number) => [new Date(2026, 11, 5), "Ilka", "squat", set, 65];
  const reading = readSets([head, odd(1), ...season, odd(2), odd(3)]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts.rows])).toEqual([
    ["A2", "day-questioned", 3],
  ]);
});

/** The days found odd among these, each with rows of its own. */
const oddAmong = (days: readonly string[]) =>
  oddDays(new Map(days.map((iso) => [dayFromIso(iso)!, 3]))).map(({ day }) => isoFromDay(day));
/** So many days a week apart. */
const weekly = (first: string, many: number) =>
  Array.from({ length: many }, (_, at) => isoFromDay(dayFromIso(first)! + 7 * at));

test("a day on a weekday of its others is in order, though swapped it would be one of them too", () => {
  // 9 May and 5 September 2026 are Saturdays both.
  expect(oddAmong(weekly("2026-04-25", 20))).toEqual([]);
});

test("a swapped day is a usual one when a fifth of all days are on its weekday", () => {
  // 6 April 2026 is a Monday, 4 June a Thursday.
  const lone = "2026-04-06";
  const tuesdays = weekly("2026-04-07", 11);
  expect(oddAmong([lone, ...tuesdays, ...weekly("2026-04-09", 3)])).toEqual([lone]);
  expect(oddAmong([lone, ...tuesdays, ...weekly("2026-04-09", 2)])).toEqual([]);
});
