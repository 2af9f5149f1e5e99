import fc from "fast-check";
import { fromDay, upToDay } from "../../../src/coaching/series/span-of-days";

const rows = [3, 5, 5, 8].map((day, row) => ({ day, row }));

test("rows from a day on and up to a day take that day's own rows in", () => {
  expect(fromDay(rows, 5)).toEqual(rows.slice(1));
  expect(upToDay(rows, 5)).toEqual(rows.slice(0, 3));
  expect([fromDay(rows, 9), upToDay(rows, 2)]).toEqual([[], []]);
});

test("where all rows are asked for they are not copied", () => {
  for (const all of [fromDay(rows, 3), fromDay(rows, 1), upToDay(rows, 8), upToDay(rows, 9)])
    expect(all).toBe(rows);
});

test("whatever the days, none is lost between up to a day and from the next on", () => {
  const days = fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 12 });
  fc.assert(
    fc.property(days, fc.integer({ min: -1, max: 10 }), (of, day) => {
      const sorted = of.sort((a, b) => a - b).map((on, row) => ({ day: on, row }));
      expect([...upToDay(sorted, day), ...fromDay(sorted, day + 1)]).toEqual(sorted);
      expect(upToDay(sorted, day).every((one) => one.day <= day)).toBe(true);
    }),
  );
});
