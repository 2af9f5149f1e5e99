import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Race } from "../record/race";
import { namedRunners } from "./named-runners";

/**
 * Races an athlete runs: those under the athlete's name or the group's, alone or among others in one
 * cell, or for all (also when blank).
 */
export function racesOf(
  races: readonly Race[],
  athlete: string,
  details: Athlete | null,
): readonly Race[] {
  const own = new Set([nameKey(athlete)]);
  if (details) own.add(nameKey(details.group));
  const names = (part: string) => own.has(nameKey(part));
  return races.filter(
    ({ who }) =>
      nameKey(who) === "" || nameKey(who) === "all" || names(who) || namedRunners(who).some(names),
  );
}
