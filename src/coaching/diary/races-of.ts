import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Race } from "../record/race";

/** Races an athlete runs: those under the athlete's name, the group's, or for all (also when blank). */
export function racesOf(
  races: readonly Race[],
  athlete: string,
  details: Athlete | null,
): readonly Race[] {
  const own = new Set(["", "all", nameKey(athlete)]);
  if (details) own.add(nameKey(details.group));
  return races.filter(({ who }) => own.has(nameKey(who)));
}
