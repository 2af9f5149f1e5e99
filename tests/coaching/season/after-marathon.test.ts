import type { Race } from "../../../src/coaching/record/race";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { gymDays } from "../../../src/coaching/season/gym-days";
import { daysSinceMarathon, raceClash } from "../../../src/coaching/season/race-hours";
import { athleteSeason } from "../../../src/coaching/season/season-plan";
import { clubRuns, day, race } from "../next-week/written-squad";

const marathon = (iso: string, over: Partial<Race> = {}) =>
  race(iso, 9, { race: "City marathon", distanceKm: 42.195, ...over });
const since = (iso: string, ...races: readonly Race[]) =>
  daysSinceMarathon(day(iso), races, usualRules);

test("loads are eased from the marathon's day until the tenth day after it", () => {
  const one = marathon("2026-05-03");
  expect(since("2026-05-03", one)).toBe(0);
  expect(since("2026-05-12", one)).toBe(9);
  expect(since("2026-05-13", one)).toBeNull();
  expect(since("2026-05-02", one)).toBeNull();
});

test("only a marathon counts, and of two the later", () => {
  const half = marathon("2026-05-03", { distanceKm: 21.0975 });
  const unread = marathon("2026-05-03", { distanceKm: null });
  expect([since("2026-05-04", half), since("2026-05-04", unread), since("2026-05-04")]).toEqual([
    null,
    null,
    null,
  ]);
  const two = [marathon("2026-05-01"), marathon("2026-05-03")] as const;
  expect(since("2026-05-06", ...two)).toBe(3);
  // A marathon need not be written to the metre.
  expect(since("2026-05-06", marathon("2026-05-03", { distanceKm: 42 }))).toBe(3);
});

test("a key run without a time is taken as a morning's", () => {
  const monday = day("2026-05-11");
  const [intervals] = clubRuns("Joss Whitterby", monday);
  const tuesday = (minute: number | null, gym: number) =>
    gymDays({
      monday,
      wanted: 1,
      runs: [{ ...intervals!, minute }],
      races: [],
      usualWeekdays: [1],
      minute: gym,
      rules: usualRules,
    }).all[1]!.refused?.code ?? null;
  // Six hours lie between 8:00 and 14:00, not between 8:00 and 13:30.
  expect([tuesday(null, 14 * 60), tuesday(null, 13 * 60 + 30)]).toEqual([null, "key-run"]);
  expect([tuesday(12 * 60, 18 * 60), tuesday(13 * 60, 18 * 60)]).toEqual([null, "key-run"]);
});

test("races of one week stand in order of day and start, one without a time first of its day", () => {
  const monday = day("2026-05-11");
  const named = (of: string, iso: string, startMinute: number | null): Race =>
    race(iso, 0, { race: of, startMinute });
  const races = [
    named("late", "2026-05-16", 17 * 60),
    named("next week", "2026-05-18", 60),
    named("early", "2026-05-16", 9 * 60),
    named("open", "2026-05-16", null),
    named("Friday", "2026-05-15", 20 * 60),
  ];
  const order = (given: readonly Race[]) =>
    athleteSeason("Joss Whitterby", null, given, [monday]).weeks[0]!.races.map((one) => one.race);
  expect(order(races)).toEqual(["Friday", "open", "early", "late"]);
  expect(order([...races].reverse())).toEqual(["Friday", "open", "early", "late"]);
});

test("a session at the very start of a race is after it, not free of it", () => {
  const one = race("2026-05-16", 10);
  const clash = (minute: number) => {
    const found = raceClash(day("2026-05-16"), minute, [one], usualRules);
    return found && [found.code, found.hours];
  };
  expect(clash(10 * 60)).toEqual(["after-race", 0]);
  expect(clash(9 * 60)).toEqual(["before-race", 1]);
  // 48 hours after a race of 10 km the next session is free again.
  expect(raceClash(day("2026-05-18"), 10 * 60, [one], usualRules)).toBeNull();
  expect(raceClash(day("2026-05-18"), 10 * 60 - 1, [one], usualRules)?.code).toBe("after-race");
});

test("only key runs keep the gym away, and each makes its own day the better one", () => {
  const monday = day("2026-05-11");
  const runs = clubRuns("Joss Whitterby", monday);
  const choices = (given: typeof runs) =>
    gymDays({
      monday,
      wanted: 2,
      runs: given,
      races: [],
      usualWeekdays: [1, 3],
      minute: 12 * 60,
      rules: usualRules,
    }).all;
  // At noon the morning's intervals and race-pace run are five hours away, the long run too.
  const near = choices(runs).map(({ refused }) => refused?.code ?? null);
  expect(near).toEqual([null, "key-run", null, "key-run", null, null, null]);
  // A usual day costs nothing, two less with a key run on it and four more before one.
  const early = runs.map((run) => ({ ...run, minute: 4 * 60 }));
  expect(choices(early).map(({ cost }) => cost)).toEqual([10, -2, 10, -2, 6, 6, 6]);
});
