import fc from "fast-check";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import type { Race } from "../../../src/coaching/record/race";
import type { Run, RunKind } from "../../../src/coaching/record/run";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { gymDays } from "../../../src/coaching/season/gym-days";

const monday = dayFromIso("2026-05-18")!;
const run = (weekday: number, kind: RunKind, hour = 7): Run => ({
  row: weekday + 2,
  day: monday + weekday,
  minute: hour * 60,
  athlete: "Tomas Reyerson",
  kind,
  minutes: 50,
  exertion: 8,
  km: 10,
});
const race: Race = {
  row: 2,
  day: monday + 5,
  startMinute: 600,
  race: "R2",
  who: "all",
  distanceKm: 10,
  surface: "road",
  matters: "A",
};
const week = {
  monday,
  wanted: 2,
  runs: [run(1, "interval"), run(3, "race pace"), run(6, "long")],
  races: [] as Race[],
  usualWeekdays: [1, 3],
  minute: 18 * 60,
  rules: usualRules,
};
const weekdays = (days: readonly { day: number }[]) => days.map(({ day }) => day - monday);

test("an ordinary week: Tuesday and Thursday, hard days hard", () => {
  const found = gymDays(week);
  expect(weekdays(found.best)).toEqual([1, 3]);
  expect(found.second.length).toBe(2);
  expect(weekdays(found.second)).not.toEqual([1, 3]);
});

test("race week: Tuesday alone, and each refused day with its rule and hours", () => {
  const found = gymDays({ ...week, races: [race] });
  const rules = found.all.map(({ refused }) =>
    refused && "hours" in refused ? [refused.code, refused.hours] : refused,
  );
  expect(rules).toEqual([
    null,
    null,
    ["before-race", 64],
    ["before-race", 40],
    ["before-race", 16],
    ["after-race", 8],
    ["after-race", 32],
  ]);
  expect(weekdays(found.best)).toContain(1);
});

test("a key run at noon or in the evening keeps lifting six hours away", () => {
  const found = gymDays({ ...week, runs: [run(1, "interval", 13), run(3, "race pace", 12)] });
  expect(found.all[1]!.refused).toMatchObject({ code: "key-run", hours: 5, limit: 6 });
  expect(found.all[3]!.refused).toBeNull();
});

test("days on which the athlete may not lift are refused, the rest of the week is searched", () => {
  const found = gymDays({ ...week, mayLift: (day) => day >= monday + 3 });
  expect(found.all[1]!.refused).toEqual({ code: "may-not-lift" });
  expect(weekdays(found.best)[0]).toBeGreaterThanOrEqual(3);
  expect(gymDays({ ...week, mayLift: () => false }).best).toEqual([]);
});

test("which of two usual days was missed once does not move the other: teammates keep the same days", () => {
  const runs = [run(1, "interval"), run(5, "race pace")];
  const best = (...usualWeekdays: number[]) =>
    weekdays(gymDays({ ...week, runs, usualWeekdays }).best);
  expect(best(1, 4)).toEqual([1, 4]);
  expect(best(4, 1)).toEqual([1, 4]);
  // A day used now and then is not one of two.
  expect(best(1, 3, 4)).toEqual([1, 3]);
});

test("with one day open there is no second choice, and none wanted is none", () => {
  const found = gymDays({ ...week, mayLift: (day) => day === monday + 4 });
  expect([weekdays(found.best), found.second]).toEqual([[4], []]);
  expect(gymDays({ ...week, wanted: 0 })).toMatchObject({ best: [], second: [] });
});

test("an evening's key run keeps the next morning's lifting away as well", () => {
  const rules = { ...usualRules, hoursToKeyRun: 12 };
  const morning = (minute: number) =>
    gymDays({ ...week, runs: [run(1, "interval", 20)], rules, minute }).all[2]!.refused;
  // From Tuesday 20:00 to Wednesday 7:00 are eleven hours, to 8:00 twelve.
  expect(morning(7 * 60)).toMatchObject({ code: "key-run", hours: 11, limit: 12 });
  expect(morning(8 * 60)).toBeNull();
});

test("no choice of allowed days, two days apart, costs less than the best", () => {
  const kinds = fc.constantFrom<RunKind>("easy", "long", "interval", "race pace");
  const runs = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), kinds, fc.nat(23)), {
    maxLength: 7,
  });
  fc.assert(
    fc.property(runs, fc.boolean(), (rows, racing) => {
      const found = gymDays({
        ...week,
        runs: rows.map(([weekday, kind, hour]) => run(weekday, kind, hour)),
        races: racing ? [race] : [],
      });
      for (const { refused } of [...found.best, ...found.second]) expect(refused).toBeNull();
      if (found.best.length < 2) {
        const open = found.all.filter(({ refused }) => refused === null);
        const apart = open.some((a) => open.some((b) => b.day - a.day >= 2));
        expect(apart).toBe(false);
        return;
      }
      const cost = (a: { day: number; cost: number }, b: { day: number; cost: number }) =>
        a.cost + b.cost + Math.max(0, 3 - (b.day - a.day));
      const best = cost(found.best[0]!, found.best[1]!);
      const open = found.all.filter(({ refused }) => refused === null);
      for (const a of open)
        for (const b of open)
          if (b.day - a.day >= 2) expect(cost(a, b)).toBeGreaterThanOrEqual(best);
    }),
  );
});

test("of three usual weekdays the two that were lifted on most are planned", () => {
  const found = gymDays({ ...week, runs: [], usualWeekdays: [0, 2, 4] });
  expect(weekdays(found.best)).toEqual([0, 2]);
});
