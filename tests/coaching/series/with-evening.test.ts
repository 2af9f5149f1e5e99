import { dayFromIso } from "../../../src/coaching/calendar/day";
import { withEvening } from "../../../src/coaching/series/with-evening";
import { readSets } from "../../rows/readers";
import { liftingSet } from "./invented-season";

const head = ["Date", "Time", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Speed (m/s)"];
const read = (...rows: readonly (readonly [string, string, string?])[]) =>
  readSets([
    head,
    ...rows.map(([date, time, athlete = "Idris Larkfoot"], at) => [
      date,
      time,
      athlete,
      "back squat",
      at + 1,
      5,
      80,
      0.7 - 0.01 * at,
    ]),
  ]).records.map(({ day, minute, set }) => [day, minute, set]);
const monday = dayFromIso("2026-02-16")!;
const at = (hours: number, minutes: number) => 60 * hours + minutes;

test("sets done past midnight are of the evening's session, dated the next day as a form does it", () => {
  expect(
    read(
      ["2026-02-16", "23:40"],
      ["2026-02-16", "23:52"],
      ["2026-02-17", "0:05"],
      ["2026-02-17", "00:17"],
    ),
  ).toEqual([
    [monday, at(23, 40), 1],
    [monday, at(23, 52), 2],
    [monday, at(23, 52), 3],
    [monday, at(23, 52), 4],
  ]);
});

test("or under the day on which the session began", () => {
  expect(read(["2026-02-16", "23:40"], ["2026-02-16", "00:05"])).toEqual([
    [monday, at(23, 40), 1],
    [monday, at(23, 40), 2],
  ]);
});

test("a row without a time is of the day written beside it", () => {
  const rows = read(["2026-02-16", "23:40"], ["2026-02-17", "00:05"], ["2026-02-17", ""]);
  expect(rows[2]).toEqual([monday + 1, null, 3]);
});

test("of two evenings it is the one just before midnight", () => {
  const days = read(["2026-02-16", "23:40"], ["2026-02-17", "00:05"], ["2026-02-17", "23:40"]);
  expect(days.map(([day]) => day)).toEqual([monday, monday, monday + 1]);
});

test("an early morning is a day of its own: without an evening, hours after it, or after another's", () => {
  const own = [monday + 1, at(0, 30), 2];
  expect(read(["2026-02-16", "21:29"], ["2026-02-17", "00:30"])[1]).toEqual(own);
  expect(read(["2026-02-16", "21:30"], ["2026-02-17", "00:30"])[1]).toEqual([
    monday,
    at(21, 30),
    2,
  ]);
  expect(read(["2026-02-16", "21:00"], ["2026-02-17", "00:00"])[1]).toEqual([monday, at(21, 0), 2]);
  expect(read(["2026-02-16", "23:40", "Bruno Teasel"], ["2026-02-17", "00:30"])[1]).toEqual(own);
  expect(read(["2026-02-15", "23:40"], ["2026-02-17", "00:30"])[1]).toEqual(own);
});

test("sets of which none was done so early are handed back as they are", () => {
  const sets = [
    liftingSet({ day: monday, minute: at(3, 0) }),
    liftingSet({ day: monday, minute: null }),
  ];
  expect(withEvening(sets)).toBe(sets);
});
