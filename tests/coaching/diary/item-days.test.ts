import { itemDays } from "../../../src/coaching/diary/item-days";
import type { PerformanceDay } from "../../../src/coaching/diary/performance-day";
import { gymDay } from "./constructed";

/** Performance by session: far down where 1, as ever elsewhere. */
const performance = (odd: string): PerformanceDay[] =>
  [...odd].map((one, s) => {
    const size = one === "1" ? -2 : one === "2" ? 2 : 0;
    return { day: gymDay(s), percent: 3 * size, size, values: [] };
  });
const sessions = "1000100020001000";
const amount = (key: string, of: (s: number) => number) =>
  ({
    key,
    kind: "amount",
    step: 1,
    unit: "points",
    values: new Map([...sessions].map((_, s) => [gymDay(s), of(s)])),
  }) as const;

test("an amount is out of the ordinary one spread beyond its mean, on the side that asks for care", () => {
  // Every fourth day 2, else 6: mean 5, squares 4·9 + 12·1 = 48 over 15.
  const of = (s: number) => (s % 4 === 0 ? 2 : 6);
  const sd = Math.sqrt(48 / 15);
  const sleep = itemDays(performance(sessions), amount("sleep", of));
  expect(sleep).toMatchObject({ verdict: "compare", side: "under", daysWith: 4 });
  expect(sleep.border).toBeCloseTo(5 - sd, 12);
  for (const key of ["soreness", "fatigue", "stress", "run the day before"]) {
    const over = itemDays(performance(sessions), amount(key, of));
    expect(over).toMatchObject({ side: "over", daysWith: 0 });
    expect(over.border).toBeCloseTo(5 + sd, 12);
  }
});

test("more than usual of what asks for care is out of the ordinary, and one day is its own mean", () => {
  const soreness = itemDays(
    performance(sessions),
    amount("soreness", (s) => (s % 4 === 0 ? 6 : 2)),
  );
  expect(soreness).toMatchObject({ side: "over", daysWith: 4 });
  const once = { ...amount("sleep", () => 7), values: new Map([[gymDay(0), 7]]) };
  expect(itemDays(performance(sessions), once).border).toBe(7);
});

test("slow and good days are counted with the item and without", () => {
  const days = itemDays(
    performance(sessions),
    amount("sleep", (s) => (s % 4 === 0 ? 2 : 6)),
  );
  // Sessions 0, 4 and 12 were slow, 8 was good; all four followed short nights.
  expect(days.count("slow", 0)).toEqual({
    oddDays: 3,
    oddDaysWith: 3,
    otherDays: 13,
    otherDaysWith: 1,
  });
  expect(days.count("good", 0)).toEqual({
    oddDays: 1,
    oddDaysWith: 1,
    otherDays: 15,
    otherDaysWith: 3,
  });
});

test("of a value missed on some days only the days with it are counted", () => {
  const odd = performance(sessions).map(
    (day, s): PerformanceDay => ({
      ...day,
      values: (s % 2 === 0 ? ["bar speed", "jump height"] : ["bar speed"]).map((kind) => ({
        kind: kind as "bar speed" | "jump height",
        of: "",
        percent: day.percent,
        size: day.size,
      })),
    }),
  );
  const carbs = amount("carbs in session", (s) => (s % 4 < 2 ? 1 : 0));
  const days = itemDays(odd, { ...carbs, kind: "yes or no", unit: "yes" });
  // Carbs on sessions 0, 1, 4, 5 and so on; jumps on the even ones, slow on 0, 4 and 12.
  expect(days.daysWith).toBe(8);
  expect(days.count("slow", 2)).toEqual({
    oddDays: 3,
    oddDaysWith: 3,
    otherDays: 5,
    otherDaysWith: 1,
  });
});

test("twelve days, four of them with and four without, are enough of a yes or no", () => {
  const yes = (count: number, length: number) =>
    itemDays(performance("0".repeat(length)), {
      key: "carbs in session",
      kind: "yes or no",
      step: 1,
      unit: "yes",
      values: new Map(Array.from({ length }, (_, s) => [gymDay(s), s < count ? 1 : 0])),
    });
  expect([yes(3, 12), yes(4, 12), yes(8, 12), yes(9, 12)].map(({ verdict }) => verdict)).toEqual([
    "not enough days",
    "compare",
    "compare",
    "not enough days",
  ]);
  expect([yes(5, 11), yes(12, 12), yes(0, 12)].map(({ verdict }) => verdict)).toEqual([
    "not enough days",
    "always the same",
    "always the same",
  ]);
  expect(yes(4, 12)).toMatchObject({ daysWith: 4, border: null, side: null });
});
