import { dayFromIso } from "../../../src/coaching/calendar/day";
import type { Race } from "../../../src/coaching/record/race";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import {
  hoursAfter,
  hoursToNextRace,
  isCutForRace,
  raceClash,
  raceNear,
  weekKind,
} from "../../../src/coaching/season/race-hours";

const day = (iso: string) => dayFromIso(iso)!;
const race = (over: Partial<Race> = {}): Race => ({
  row: 2,
  day: day("2026-05-23"),
  startMinute: 600,
  race: "R2",
  who: "all",
  distanceKm: 10,
  surface: "road",
  matters: "A",
  ...over,
});
const clash = (iso: string, hour: number, ...races: Race[]) => {
  const found = raceClash(day(iso), hour * 60, races, usualRules);
  return found && [found.code, found.hours, found.limit];
};

test("Saturday 10:00, A: Thursday 18:00 is 40 h before it, Wednesday 10:00 the last hour of 72", () => {
  expect(clash("2026-05-21", 18, race())).toEqual(["before-race", 40, 72]);
  // Wednesday 10:00 is exactly 72 h before; an hour later is 71.
  expect(clash("2026-05-20", 10, race())).toBeNull();
  expect(clash("2026-05-20", 11, race())).toEqual(["before-race", 71, 72]);
  expect(clash("2026-05-19", 18, race())).toBeNull();
});

test("the start time counts: a Saturday evening race leaves Wednesday evening, hour by hour", () => {
  expect(clash("2026-05-20", 18, race({ startMinute: 18 * 60 }))).toBeNull();
  // Without a start the day's beginning counts: 54 h from Wednesday 18:00.
  expect(clash("2026-05-20", 18, race({ startMinute: null }))).toEqual(["before-race", 54, 72]);
});

test("B and C races ask for 48 h", () => {
  expect(clash("2026-05-21", 18, race({ matters: "B" }))).toEqual(["before-race", 40, 48]);
  expect(clash("2026-05-21", 10, race({ matters: "C" }))).toBeNull();
});

test("after a 10 km 48 h: from Monday 10:00 on, so Tuesday stands", () => {
  expect(clash("2026-05-25", 9, race())).toEqual(["after-race", 47, 48]);
  expect(clash("2026-05-25", 10, race())).toBeNull();
  expect(clash("2026-05-26", 18, race())).toBeNull();
});

test("a race without a start may be late in its day: hours after it count from the day's end", () => {
  const evening = race({ startMinute: null });
  expect(clash("2026-05-23", 18, evening)).toEqual(["after-race", 0, 48]);
  expect(clash("2026-05-24", 18, evening)).toEqual(["after-race", 18, 48]);
  expect(clash("2026-05-25", 23, evening)).toEqual(["after-race", 47, 48]);
  expect(clash("2026-05-26", 0, evening)).toBeNull();
});

test("longer races ask for longer rest, by their distance, as the squad sets it", () => {
  const hours = (distanceKm: number | null) => hoursAfter(race({ distanceKm }), usualRules);
  expect([null, 1.5, 10, 15, 21.0975, 42.195].map(hours)).toEqual([48, 48, 48, 72, 72, 168]);
  // Neither a road 10 km measured long nor a marathon written in whole kilometres is another race.
  expect([10.5, 10.6, 41.9, 42].map(hours)).toEqual([48, 72, 72, 168]);
  expect(hoursAfter(race({ distanceKm: 21.0975 }), { ...usualRules, hoursAfterHalf: 96 })).toBe(96);
});

test("hours are counted to the nearest race ahead, within three weeks to the hour", () => {
  const hours = (iso: string, hour: number, ...races: Race[]) =>
    hoursToNextRace(day(iso), hour * 60, races);
  const later = race({ day: day("2026-05-30") });
  expect(hours("2026-05-22", 10, later, race())).toBe(24);
  // At the start itself the next one is looked for.
  expect(hours("2026-05-23", 10, race(), later)).toBe(7 * 24);
  expect(hours("2026-05-23", 10, race())).toBeNull();
  expect([hours("2026-05-02", 10, race()), hours("2026-05-02", 9, race())]).toEqual([504, null]);
  expect(hours("2026-05-22", 10, race({ startMinute: null }))).toBe(14);
});

test("an A race on a Monday or a Sunday is of its own week alone", () => {
  const mondays = ["2026-05-11", "2026-05-18", "2026-05-25"].map(day);
  const kinds = (iso: string) =>
    mondays.map((monday) => weekKind(monday, [race({ day: day(iso) })]));
  expect(kinds("2026-05-18")).toEqual(["ordinary", "race week", "week after"]);
  expect(kinds("2026-05-24")).toEqual(["ordinary", "race week", "week after"]);
});

test("a week with an A race is race week, the next the week after, B races leave it ordinary", () => {
  const mondays = ["2026-05-11", "2026-05-18", "2026-05-25", "2026-06-01"].map(day);
  expect(mondays.map((monday) => weekKind(monday, [race()]))).toEqual([
    "ordinary",
    "race week",
    "week after",
    "ordinary",
  ]);
  expect(weekKind(mondays[1]!, [race({ matters: "B" })])).toBe("ordinary");
});

test("an A race is prepared on the six days before it, whichever day it is, and in all of its week", () => {
  const cut = (iso: string, ...races: Race[]) => isCutForRace(day(iso), races);
  const on = (iso: string, over: Partial<Race> = {}) => race({ day: day(iso), ...over });
  // Sunday 24 May: Monday to Sunday. Monday 25 May: from Tuesday 19 on.
  const days = ["2026-05-17", "2026-05-18", "2026-05-19"];
  expect(days.map((iso) => cut(iso, on("2026-05-24")))).toEqual([false, true, true]);
  expect(days.map((iso) => cut(iso, on("2026-05-25")))).toEqual([false, false, true]);
  expect(cut("2026-05-19", on("2026-05-25", { matters: "B" }))).toBe(false);
  // Friday after Wednesday's race is still of its week; the Monday after is not.
  expect(["2026-05-22", "2026-05-25"].map((iso) => cut(iso, on("2026-05-20")))).toEqual([
    true,
    false,
  ]);
});

test("of two A races near it is the first that is prepared, and a race of the day itself is none to come", () => {
  const races = ["2026-05-27", "2026-05-25", "2026-05-26"].map((iso) => race({ day: day(iso) }));
  expect(raceNear(day("2026-05-22"), races)?.day).toBe(day("2026-05-25"));
  expect(raceNear(day("2026-05-25"), races)?.day).toBe(day("2026-05-26"));
  expect(raceNear(day("2026-05-27"), races)).toBeNull();
});

test("of heats and a final the nearer one is told", () => {
  const heats = race({ race: "heats", startMinute: 18 * 60 });
  const final = race({ race: "final", day: day("2026-05-25"), startMinute: 16 * 60 });
  const told = (iso: string, hour: number) => {
    const found = raceClash(day(iso), hour * 60, [heats, final], usualRules);
    return found && [found.race.race, found.code, found.hours];
  };
  // Monday 17:00 is 47 h after Saturday's heats, and an hour after the final.
  expect(told("2026-05-25", 17)).toEqual(["final", "after-race", 1]);
  expect(told("2026-05-24", 20)).toEqual(["final", "before-race", 20]);
  expect(told("2026-05-23", 20)).toEqual(["heats", "after-race", 2]);
});

test("of two races at one time the one written first is told", () => {
  const [first, second] = [race({ race: "5 km" }), race({ race: "10 km" })];
  expect(raceNear(day("2026-05-20"), [first, second])?.race).toBe("5 km");
  expect(raceClash(day("2026-05-21"), 18 * 60, [first, second], usualRules)?.race.race).toBe(
    "5 km",
  );
});
