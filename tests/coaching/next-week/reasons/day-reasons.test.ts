import { dayReasons } from "../../../../src/coaching/next-week/reasons/day-reasons";
import type { DayChoice } from "../../../../src/coaching/season/gym-days";
import { day, race } from "../written-squad";

const monday = day("2026-05-11");
const sunday = race("2026-05-10", 18);
const next = race("2026-05-17", 10);
const refusal = { race: sunday, hours: 24, limit: 48 };

/** Monday comes too soon after Sunday's race, Friday too soon before the next one. */
const all: readonly DayChoice[] = [0, 1, 2, 3, 4, 5, 6].map((weekday) => ({
  day: monday + weekday,
  minute: 18 * 60,
  cost: 0,
  refused:
    weekday === 0
      ? { code: "after-race", ...refusal }
      : weekday === 4
        ? { code: "before-race", ...refusal, race: next, hours: 40.5, limit: 72 }
        : null,
}));

test("where a session is wanting, the first day before a race is named, not one after a race", () => {
  const days = { best: [all[2]!], second: [], all };
  expect(dayReasons(days, 2, [2])).toEqual([
    {
      code: "day-before-race",
      facts: { day: monday + 4, hours: 40, race: next.race, matters: "A", limit: 72 },
    },
  ]);
});
