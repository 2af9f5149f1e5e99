import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Race } from "../record/race";
import { namesRunner } from "./named-runners";

/**
 * Races an athlete runs: those under the athlete's name or the group's, alone or among others in one
 * cell, or for all (also when blank).
 */
export function racesOf(
  races: readonly Race[],
  athlete: string,
  details: Athlete | null,
): readonly Race[] {
  const own = details ? [athlete, details.group] : [athlete];
  return races.filter(
    ({ who }) =>
      nameKey(who) === "" || nameKey(who) === "all" || own.some((name) => namesRunner(who, name)),
  );
}
