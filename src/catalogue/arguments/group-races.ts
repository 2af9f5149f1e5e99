import { namedRunners, namesRunner } from "../../coaching/diary/named-runners";
import { nameKey } from "../../coaching/record/name-key";
import type { Race } from "../../coaching/record/race";
import type { AskedAthlete } from "../../rows/argument/athletes-argument";

/**
 * Whom races name that are neither for all nor for an athlete asked about, where no group of theirs is
 * known: names alone were given, and a race for a group may be theirs.
 */
export function groupRaces(
  asked: readonly AskedAthlete[],
  races: readonly Race[],
): readonly string[] {
  if (asked.some(({ record }) => record !== null && record.group !== "")) return [];
  const others = races.filter(
    ({ who }) =>
      !["", "all"].includes(nameKey(who)) &&
      !asked.some(({ athlete }) => namesRunner(who, athlete)),
  );
  return [...new Set(others.flatMap(({ who }) => namedRunners(who)))];
}
