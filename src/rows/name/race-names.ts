import { namedRunners, runnerKey } from "../../coaching/diary/named-runners";
import { nameKey } from "../../coaching/record/name-key";
import type { Race } from "../../coaching/record/race";
import type { NameAnswers } from "./name-answers";

type Listed = { readonly athlete: string; readonly group: string };

/** Each name among the runners of races that is no group's, beside its row; a race for all names nobody. */
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
  return races.flatMap(({ row, who }) => {
    const parts = who === "all" || whole.has(nameKey(who)) ? [] : namedRunners(who);
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

/** Races with every answered spelling of a runner replaced by the athlete's name. */
export function withRaceNames(races: readonly Race[], { same }: NameAnswers): readonly Race[] {
  if (same.length === 0) return races;
  const meant = new Map(same.map(({ written, athlete }) => [nameKey(written), athlete]));
  return races.map((race) => {
    const whole = meant.get(nameKey(race.who));
    if (whole !== undefined) return { ...race, who: whole };
    const named = namedRunners(race.who);
    if (!named.some((one) => meant.has(nameKey(one)))) return race;
    return { ...race, who: named.map((one) => meant.get(nameKey(one)) ?? one).join("; ") };
  });
}
