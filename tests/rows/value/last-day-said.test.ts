import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { lastDaySaid } from "../../../src/rows/value/last-day-said";

const said = (text: string, asOf = "2026-05-29") => {
  const day = lastDaySaid(text, dayFromIso(asOf)!);
  return day === null ? null : isoFromDay(day);
};

test.each([
  ["out until 12 June", "2026-06-12"],
  ["Urlaub bis 12.6.", "2026-06-12"],
  ["away 1–12 June", "2026-06-12"],
  ["camp 8.–21.6.2026 in the hills", "2026-06-21"],
  ["holiday from 1 June to 12 June", "2026-06-12"],
  ["away (back 2026-06-05)", "2026-06-05"],
  // Both readings are possible, and the later is over last.
  ["out until 12/6", "2026-06-12"],
  ["out until 1/6", "2026-06-01"],
  ["camp 2024", "2024-12-31"],
])("“%s” names %s last", (text, iso) => {
  expect(said(text)).toBe(iso);
});

test("a year that is not written is the nearest", () => {
  expect(said("out until 12 June", "2026-11-27")).toBe("2026-06-12");
  expect(said("out until 12 January", "2026-11-27")).toBe("2027-01-12");
});

test.each(["away", "away from 1 June", "ab 1.6. eine Woche weg", "out until Monday", "5x5 next"])(
  "“%s” names no last day",
  (text) => {
    expect(said(text)).toBeNull();
  },
);
