import { rowCheck } from "../../../src/actions/row-check/row-check";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

/** Tuesdays and Thursdays from 7 April 2026 on, and the only Monday, the 6th: 4 June, swapped. */
const monday = new Date(2026, 3, 6);
const season = Array.from({ length: 20 }, (_, at) => {
  const date = new Date(2026, 3, 7 + 7 * Math.floor(at / 2) + 2 * (at % 2));
  return [date, "Ilka", "squat", 1, 65];
});
const asked = (weekTab: readonly (readonly unknown[])[]) =>
  rowCheck(
    memoryWorkbook({
      Sets: [
        ["Date", "Athlete", "Exercise", "Set", "Load (kg)"],
        ...season,
        [monday, "Ilka", "squat", 2, 65],
      ],
      "Next week": weekTab,
    }),
    dayFromIso("2026-06-21")!,
  ).problems.map(({ cell, kind }) => [cell, kind]);

test("a Monday that the Next week tab asked for is not questioned, any other is", () => {
  const written = (day: Date) => [
    ["Athlete", "Day", "Line"],
    ["Ilka", day, "2026-04-06 Ilka 1"],
  ];
  expect(asked(written(new Date(2026, 3, 7)))).toEqual([["A22", "weekday-questioned"]]);
  expect(asked(written(monday))).toEqual([]);
});
