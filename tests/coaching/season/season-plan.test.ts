import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import type { Race } from "../../../src/coaching/record/race";
import { seasonPlan } from "../../../src/coaching/season/season-plan";
import { athleteRow } from "../series/invented-season";

const day = (iso: string) => dayFromIso(iso)!;
const athlete = (name: string, group: string) =>
  athleteRow({ athlete: name, group, experience: null });
const race = (iso: string, who: string, matters: Race["matters"], name = "R"): Race => ({
  row: 2,
  day: day(iso),
  startMinute: 600,
  race: name,
  who,
  distanceKm: 10,
  surface: "road",
  matters,
});
const squad = [athlete("Tomas Reyerson", "track"), athlete("Hamid Sorley", "marathon")];
const races = [
  race("2026-04-26", "Hamid Sorley", "A", "marathon"),
  race("2026-05-23", "all", "A", "R2"),
  race("2026-06-13", "track", "B", "R3"),
  race("2026-07-05", "track", "A", "R4 day 2"),
  race("2026-07-04", "track", "A", "R4 day 1"),
  race("2026-08-02", "all", "A", "R5"),
];

test("an invented season of 18 weeks, week by week, by hand", () => {
  // Monday 6 April to Sunday 9 August 2026 is 18 weeks.
  const plan = seasonPlan(squad, races, day("2026-04-06"), 18)!;
  expect(isoFromDay(plan.lastMonday)).toBe("2026-08-03");
  expect(plan.unusualLength).toBe(false);
  const odd = (at: number) =>
    plan.athletes[at]!.weeks.filter(({ kind }) => kind !== "ordinary").map(
      ({ monday, kind }) => `${isoFromDay(monday)} ${kind}`,
    );
  expect(odd(0)).toEqual([
    "2026-05-18 race week",
    "2026-05-25 week after",
    "2026-06-29 race week",
    "2026-07-06 week after",
    "2026-07-27 race week",
    "2026-08-03 week after",
  ]);
  expect(odd(1)).toEqual([
    "2026-04-20 race week",
    "2026-04-27 week after",
    "2026-05-18 race week",
    "2026-05-25 week after",
    "2026-07-27 race week",
    "2026-08-03 week after",
  ]);
});

test("a B race is written in its week, which stays ordinary; two races of a week stand in order", () => {
  const weeks = seasonPlan(squad, races, null, null)!.athletes[0]!.weeks;
  const of = (iso: string) => weeks.find(({ monday }) => monday === day(iso))!;
  expect(of("2026-06-08")).toMatchObject({ kind: "ordinary", races: [{ race: "R3" }] });
  expect(of("2026-06-29").races.map((one) => one.race)).toEqual(["R4 day 1", "R4 day 2"]);
});

test("without a first day the season goes from the first race to the last; a short one is said", () => {
  const plan = seasonPlan(squad, races, null, null)!;
  // Week of Sunday 26 April to week of Sunday 2 August: 15 weeks.
  expect([isoFromDay(plan.firstMonday), isoFromDay(plan.lastMonday)]).toEqual([
    "2026-04-20",
    "2026-07-27",
  ]);
  expect(plan.unusualLength).toBe(true);
  expect(seasonPlan(squad, [], null, 18)).toBeNull();
});

test("sixteen to twenty weeks are a usual season, and without races or weeks it is the week of its first day", () => {
  const unusual = (weeks: number) => seasonPlan(squad, [], day("2026-04-06"), weeks)!.unusualLength;
  expect([15, 16, 20, 21].map(unusual)).toEqual([true, false, false, true]);
  const plan = seasonPlan(squad, [], day("2026-04-08"), null)!;
  expect(plan.athletes[0]!.weeks.map(({ monday }) => isoFromDay(monday))).toEqual(["2026-04-06"]);
});

test("a race on a Monday stands in the week it begins", () => {
  const weeks = seasonPlan(squad, [race("2026-05-18", "all", "B")], day("2026-05-11"), 2)!
    .athletes[0]!.weeks;
  expect(weeks.map(({ races: own }) => own.length)).toEqual([0, 1]);
});
