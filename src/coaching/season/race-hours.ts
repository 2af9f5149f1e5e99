import { type Day, mondayOf } from "../calendar/day";
import type { Race } from "../record/race";
import type { SquadRules } from "../record/squad-rules";

/** A rule about a race that a gym session would break. */
export type RaceClash = {
  readonly code: "before-race" | "after-race";
  readonly race: Race;
  /** Hours between the session's start and the race's, at least; and the hours the rule asks for. */
  readonly hours: number;
  readonly limit: number;
};

const marathonKm = 42;
/** A road 10 km is measured long rather than short; anything clearly past it counts as a half. */
const tenKm = 10.5;

/**
 * Hours after a race without heavy work or jumps, by its distance: 48 up to 10 km, 72 past it up to a
 * half, 7 days after a marathon (common practice, no source; jump power was still down 12 % five days
 * after a marathon, Petersen et al. 2007). A distance that was not read counts as the shortest.
 */
export function hoursAfter({ distanceKm }: Race, rules: SquadRules): number {
  if (distanceKm === null || distanceKm <= tenKm) return rules.hoursAfterTen;
  return distanceKm >= marathonKm ? rules.hoursAfterMarathon : rules.hoursAfterHalf;
}

/** Days since the athlete's latest marathon while loads are still eased for it; null otherwise. */
export function daysSinceMarathon(
  day: Day,
  races: readonly Race[],
  rules: SquadRules,
): number | null {
  const since = races
    .filter(({ distanceKm }) => distanceKm !== null && distanceKm >= marathonKm)
    .map((race) => day - race.day)
    .filter((days) => days >= 0 && days < rules.daysToUsualAfterMarathon);
  return since.length === 0 ? null : Math.min(...since);
}

/** Hours before a race without heavy or high-contact work, by how much it matters. */
function hoursBefore({ matters }: Race, rules: SquadRules): number {
  return matters === "A" ? rules.hoursBeforeA : rules.hoursBeforeOthers;
}

/** The race rule that a session would break, of several that of the nearest race; null when it breaks none. */
export function raceClash(
  day: Day,
  minute: number,
  races: readonly Race[],
  rules: SquadRules,
): RaceClash | null {
  const at = day * 24 + minute / 60;
  let nearest: RaceClash | null = null;
  const add = (clash: RaceClash) => {
    if (nearest === null || clash.hours < nearest.hours) nearest = clash;
  };
  for (const race of races) {
    const start = race.day * 24 + (race.startMinute ?? 0) / 60;
    if (at < start && start - at < hoursBefore(race, rules)) {
      add({ code: "before-race", race, hours: start - at, limit: hoursBefore(race, rules) });
    }
    // Without a start it may be any hour of its day: its first counts before it, its last after it.
    const since = race.startMinute === null ? at - 24 * (race.day + 1) : at - start;
    if (at >= start && since < hoursAfter(race, rules)) {
      const hours = Math.max(0, since);
      add({ code: "after-race", race, hours, limit: hoursAfter(race, rules) });
    }
  }
  return nearest;
}

/** Further ahead no race is counted down to. */
const farthestHours = 21 * 24;

/** Hours from a session to the next race within three weeks, a race without a start time at midnight; null without one. */
export function hoursToNextRace(day: Day, minute: number, races: readonly Race[]): number | null {
  const at = day * 24 + minute / 60;
  const ahead = races
    .map((race) => race.day * 24 + (race.startMinute ?? 0) / 60 - at)
    .filter((hours) => hours > 0 && hours <= farthestHours);
  return ahead.length === 0 ? null : Math.min(...ahead);
}

export type WeekKind = "ordinary" | "race week" | "week after";

/** What a week is for an athlete: one with an A race, the one after such a week, or neither. */
export function weekKind(monday: Day, races: readonly Race[]): WeekKind {
  const inWeek = (first: Day) =>
    races.some(({ day, matters }) => matters === "A" && day >= first && day < first + 7);
  if (inWeek(monday)) return "race week";
  return inWeek(monday - 7) ? "week after" : "ordinary";
}

/** A race on a Sunday is prepared from Monday on: as many days before any other. */
const daysBefore = 6;

/** The next A race on one of the six days after a day; null without one. */
export function raceNear(day: Day, races: readonly Race[]): Race | null {
  let near: Race | null = null;
  for (const race of races) {
    const days = race.day - day;
    if (race.matters !== "A" || days <= 0 || days > daysBefore) continue;
    if (near === null || race.day < near.day) near = race;
  }
  return near;
}

/**
 * Whether a day's session has fewer sets for an A race: all of its week, and the six days before it,
 * so that a race on a Monday is prepared as one on the Sunday before.
 */
export const isCutForRace = (day: Day, races: readonly Race[]): boolean =>
  weekKind(mondayOf(day), races) === "race week" || raceNear(day, races) !== null;
