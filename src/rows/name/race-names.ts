import { namedInBrackets, namedRunners, runnerKey } from "../../coaching/diary/named-runners";
import { nameKey } from "../../coaching/record/name-key";
import type { Race } from "../../coaching/record/race";
import { remembered } from "../../coaching/series/remembered";
import type { NameAnswers } from "./name-answers";
import { nameLink } from "./near-name";

type Listed = { readonly athlete: string; readonly group: string };

/**
 * Each name among the runners of races that is no group's, beside its row. A race for all names nobody,
 * but for those in its brackets that may be an athlete.
 */
export function raceNames(
  races: readonly Race[],
  athletes: readonly Listed[],
): { readonly row: number; readonly athlete: string }[] {
  const whole = new Set(
    athletes.flatMap(({ athlete, group }) => [nameKey(athlete), nameKey(group)]),
  );
  const known = new Set(
    athletes.flatMap(({ athlete, group }) =>
      // Names of one word are told apart by the check of names itself.
      namedRunners(athlete).length > 1 ? [runnerKey(athlete), runnerKey(group)] : runnerKey(group),
    ),
  );
  const mayBe = remembered((part: string) =>
    athletes.some(({ athlete }) => nameLink(part, athlete) !== null),
  );
  return races.flatMap(({ row, who, race }) => {
    const parts =
      who === "all"
        ? namedInBrackets(race).filter(mayBe)
        : whole.has(nameKey(who))
          ? []
          : namedRunners(who);
    const unknown: { row: number; athlete: string }[] = [];
    for (let at = 0; at < parts.length; ) {
      const length = [3, 2, 1].find((one) =>
        known.has(runnerKey(parts.slice(at, at + one).join())),
      );
      if (length === undefined) unknown.push({ row, athlete: parts[at]! });
      at += length ?? 1;
    }
    return unknown;
  });
}

/**
 * Races with every answered spelling of a runner replaced by the athlete's name. A race for all whose
 * brackets name athletes and groups alone is theirs.
 */
export function withRaceNames(
  races: readonly Race[],
  { same }: NameAnswers,
  athletes: readonly Listed[] = [],
): readonly Race[] {
  if (same.length + athletes.length === 0) return races;
  const meant = new Map(same.map(({ written, athlete }) => [nameKey(written), athlete]));
  const listed = new Set(
    athletes.flatMap(({ athlete, group }) => [nameKey(athlete), nameKey(group)]),
  );
  return races.map((race) => {
    if (race.who === "all") {
      const named = namedInBrackets(race.race).map((one) => meant.get(nameKey(one)) ?? one);
      const theirs = named.length > 0 && named.every((one) => listed.has(nameKey(one)));
      return theirs ? { ...race, who: named.join("; ") } : race;
    }
    const whole = meant.get(nameKey(race.who));
    if (whole !== undefined) return { ...race, who: whole };
    const named = namedRunners(race.who);
    if (!named.some((one) => meant.has(nameKey(one)))) return race;
    return { ...race, who: named.map((one) => meant.get(nameKey(one)) ?? one).join("; ") };
  });
}
