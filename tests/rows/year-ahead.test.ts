import { type Day, dayFromIso } from "../../src/coaching/calendar/day";
import { yearAhead } from "../../src/rows/layout/year-ahead";

const days = (...isos: string[]) => isos.map((iso) => dayFromIso(iso) as Day);
const cut = dayFromIso("2026-05-26") as Day;

test("days after the one asked about go on in the season when the break lies the other way round", () => {
  expect(yearAhead(days("2026-05-05", "2026-05-12", "2026-06-02", "2026-06-30"), cut)).toBe(
    "this year",
  );
});

test("days of last autumn are last year's when the break lies before them", () => {
  expect(yearAhead(days("2026-04-05", "2026-05-12", "2026-11-02", "2026-12-20"), cut)).toBe(
    "last year",
  );
});

test("a tab with nothing up to the day is last year's", () => {
  expect(yearAhead(days("2026-09-01", "2026-09-08"), cut)).toBe("last year");
});

test("a break of just a hundred days tells on either side, equal breaks do not", () => {
  const at = (...from: number[]) => from.map((days) => cut + days);
  // 100 days to the next day, 99 round the year; then the other way about.
  expect(yearAhead(at(-50, -216, 50), cut)).toBe("last year");
  expect(yearAhead(at(-50, 49, 215), cut)).toBe("this year");
  expect(yearAhead(at(-50, 49, 216), cut)).toBeNull();
  expect(yearAhead(at(-60, -50, 100, 155), cut)).toBeNull();
});

test("the day itself lies not ahead", () => {
  expect(yearAhead([cut], cut)).toBe("last year");
});

test("a tab all round the year does not say", () => {
  const monthly = Array.from({ length: 12 }, (_, at) => (cut as number) - 140 + 30 * at) as Day[];
  expect(yearAhead(monthly, cut)).toBeNull();
});
