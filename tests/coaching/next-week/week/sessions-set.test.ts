import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import type { LineChange } from "../../../../src/coaching/next-week/proposed-line";
import { athlete, day, session, squadRows, state } from "../written-squad";

const name = "Ilka Brandmoor";
const monday = day("2026-05-11");
/** Gym days of the week proposed, 0 Monday, of an athlete whose last two sessions were on the days given. */
const daysWith = (weekdays: readonly number[], change: LineChange) =>
  proposeLine({
    athlete: athlete(name, { sessionsAWeek: weekdays.length }),
    name,
    state: state(name),
    rows: squadRows({
      sets: [0, 1, 2].flatMap((week) =>
        weekdays.flatMap((weekday) =>
          session(
            name,
            new Date(86_400_000 * (monday - 21 + 7 * week + weekday)).toISOString().slice(0, 10),
            { sets: 3, reps: 5, loadKg: 60, markerKg: 40 },
          ),
        ),
      ),
    }),
    monday,
    asOf: monday - 1,
    change,
  }).sessions.map((one) => one.day - monday);

test("whoever comes twice is planned one session where the coach says one, on the day the coach says", () => {
  expect(daysWith([1, 3], {})).toEqual([1, 3]);
  expect(daysWith([1, 3], { sessions: 1 })).toHaveLength(1);
  expect(daysWith([1, 3], { sessions: 1, day: monday + 4 })).toEqual([4]);
});

test("whoever comes once is planned two sessions where the coach says two, well apart", () => {
  expect(daysWith([2], {})).toEqual([2]);
  const [first, second] = daysWith([2], { sessions: 2 });
  expect(first).toBe(2);
  expect(Math.abs(second! - first!)).toBeGreaterThanOrEqual(2);
});
