import vm from "node:vm";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { accept, refuse } from "../../../src/outcome";
import { readDayArgument } from "../../../src/rows/argument/day-argument";

const day = (iso: string) => accept(dayFromIso(iso) as number);

test("a date cell, also from another realm and with a time of day, is its local day", () => {
  expect(readDayArgument(new Date(2026, 5, 16, 23, 59))).toEqual(day("2026-06-16"));
  expect(readDayArgument(vm.runInNewContext("new Date(2026, 5, 16)"))).toEqual(day("2026-06-16"));
  expect(readDayArgument([[new Date(2026, 5, 16)]])).toEqual(day("2026-06-16"));
});

test("ISO text and text that can only be one day are read", () => {
  expect(readDayArgument("2026-06-16")).toEqual(day("2026-06-16"));
  expect(readDayArgument("16/6/2026")).toEqual(day("2026-06-16"));
  expect(readDayArgument("6/16/2026")).toEqual(day("2026-06-16"));
  expect(readDayArgument("16 June 2026")).toEqual(day("2026-06-16"));
  expect(readDayArgument("6/6/2026")).toEqual(day("2026-06-06"));
});

test("anything else is refused with what was found", () => {
  expect(readDayArgument("5/6/2026")).toEqual(
    refuse("as-of-ambiguous", { name: "as_of", found: "5/6/2026" }),
  );
  expect(readDayArgument("16 June")).toEqual(
    refuse("as-of-no-year", { name: "as_of", found: "16 June" }),
  );
  expect(readDayArgument("soon")).toEqual(
    refuse("as-of-not-a-day", { name: "as_of", found: "soon" }),
  );
  expect(readDayArgument("2026-02-30")).toEqual(
    refuse("as-of-not-a-day", { name: "as_of", found: "2026-02-30" }),
  );
  expect(readDayArgument(46189)).toEqual(
    refuse("as-of-not-a-day", { name: "as_of", found: "46189" }),
  );
  const yearTwentySix = new Date(2026, 5, 16);
  yearTwentySix.setFullYear(26);
  expect(readDayArgument(yearTwentySix)).toEqual(
    refuse("as-of-not-a-day", { name: "as_of", found: "26-06-16" }),
  );
  expect(readDayArgument("")).toEqual(refuse("as-of-missing", { name: "as_of" }));
  expect(readDayArgument(undefined, "first_day")).toEqual(
    refuse("as-of-missing", { name: "first_day" }),
  );
});

test("a range of days is told to be one, whatever stands in it", () => {
  for (const cells of [[[new Date(2026, 5, 25)], [""]], [["2026-06-25", "2026-06-28"]]])
    expect(readDayArgument(cells)).toEqual(refuse("as-of-not-one-cell", { name: "as_of" }));
  expect(readDayArgument([["2026-06-25"]]).ok).toBe(true);
});
