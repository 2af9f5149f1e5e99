import { nameKey } from "../record/name-key";

const between = /\s*(?:[;,/&+]|(?<!\p{L})(?:and|und)(?!\p{L}))\s*/iu;

/** Each of those one cell of a race names: "Ilka Brandmoor; Tomas Reyerson", "track & road". */
export const namedRunners = (who: string): readonly string[] =>
  who.split(between).filter((part) => part !== "");

/** A name as it stands among others: a comma within it, "Brandmoor, Ilka", parts it like the rest. */
export const runnerKey = (name: string): string => namedRunners(name).map(nameKey).join(",");

/** Whether one cell of a race names an athlete or a group, alone or among others. */
export const namesRunner = (who: string, name: string): boolean => {
  const key = runnerKey(name);
  return key !== "" && `,${runnerKey(who)},`.includes(`,${key},`);
};

/** What the brackets of a race may name, "10k champs (Ilka, Tomas)"; none without brackets. */
export const namedInBrackets = (race: string): readonly string[] =>
  namedRunners((/\(([^()]{1,200})\)/.exec(race)?.[1] ?? "").trim());
