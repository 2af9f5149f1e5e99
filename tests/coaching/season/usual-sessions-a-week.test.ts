import { dayFromIso } from "../../../src/coaching/calendar/day";
import { usualSessionsAWeek } from "../../../src/coaching/season/usual-sessions-a-week";

const monday = dayFromIso("2026-03-02")!;
const every = (gap: number, count: number) =>
  Array.from({ length: count }, (_, i) => monday + gap * i);
const twice = (weeks: number) =>
  Array.from({ length: weeks }, (_, i) => [monday + 7 * i + 1, monday + 7 * i + 4]).flat();

test("what the Athletes table says stands before what was done", () => {
  expect(usualSessionsAWeek({ sessionsAWeek: 2 }, every(7, 8))).toBe(2);
  expect(usualSessionsAWeek({ sessionsAWeek: 1 }, twice(8))).toBe(1);
});

test("left blank it is as often as the athlete came: weekly and every ten days are once", () => {
  for (const about of [null, undefined, { sessionsAWeek: null }]) {
    expect(usualSessionsAWeek(about, every(7, 8))).toBe(1);
    expect(usualSessionsAWeek(about, every(10, 8))).toBe(1);
    expect(usualSessionsAWeek(about, twice(8))).toBe(2);
  }
});

test("a few weeks with one session missed are still two a week, and the newest days count", () => {
  const missed = twice(8).filter((_, i) => ![5, 9, 13].includes(i));
  expect(usualSessionsAWeek(null, missed)).toBe(2);
  const later = every(7, 12).map((day) => day + 70);
  expect(usualSessionsAWeek(null, [...later, ...twice(8)])).toBe(1);
  // Two sets of one day are one session.
  expect(usualSessionsAWeek(null, [...every(7, 4), ...every(7, 4)])).toBe(1);
});

test("of fewer than three weeks with a session nothing is read: two", () => {
  expect(usualSessionsAWeek(null, [])).toBe(2);
  expect([2, 3].map((weeks) => usualSessionsAWeek(null, every(7, weeks)))).toEqual([2, 1]);
});

test("four weeks of one are once a week, however often the athlete came before", () => {
  const thrice = [0, 1, 2, 3, 4, 5].flatMap((week) =>
    [0, 2, 4].map((day) => monday + 7 * week + day),
  );
  const once = (weeks: number) => every(7, weeks).map((day) => day + 42);
  expect([3, 4].map((weeks) => usualSessionsAWeek(null, [...thrice, ...once(weeks)]))).toEqual([
    2, 1,
  ]);
  expect(usualSessionsAWeek(null, thrice)).toBe(2);
});

test("the last weeks speak, not a season of two a week before them", () => {
  const later = every(7, 12).map((day) => day + 7 * 40);
  expect(usualSessionsAWeek(null, [...twice(40), ...later])).toBe(1);
});

test("once a fortnight is half a session a week, from the fourth session on; what is written stands", () => {
  expect([3, 4, 8].map((count) => usualSessionsAWeek(null, every(14, count)))).toEqual([
    1, 0.5, 0.5,
  ]);
  expect(usualSessionsAWeek({ sessionsAWeek: 1 }, every(14, 8))).toBe(1);
  expect([10, 11].map((gap) => usualSessionsAWeek(null, every(gap, 8)) < 1)).toEqual([false, true]);
  // Two sets of a day make no gap of none.
  expect(usualSessionsAWeek(null, [...every(14, 5), ...every(14, 5)])).toBe(0.5);
});

test("a long break among weekly sessions makes nobody rare, and the newest gaps count", () => {
  const back = every(7, 4).map((day) => day + 100);
  expect(usualSessionsAWeek(null, [...every(7, 4), ...back])).toBe(1);
  const rarer = every(14, 8).map((day) => day + 100);
  expect(usualSessionsAWeek(null, [...twice(8), ...rarer])).toBe(0.5);
});
