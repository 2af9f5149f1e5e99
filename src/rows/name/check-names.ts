import { nameKey } from "../../coaching/record/name-key";
import { spellingLink } from "./near-name";
import { spellingOf } from "./spelling";

/** A name in the rows that the Athletes table does not know. */
export type UnknownName = {
  /** As first written. */
  readonly name: string;
  /** Row of its first use, from 1, and how many rows carry it. */
  readonly firstRow: number;
  readonly rows: number;
  /** Athletes it may mean, as the Athletes table spells them; several need the coach's word. */
  readonly near: readonly string[];
};

/** Names in `records` that match no athlete, each with the athletes it could mean. */
export function checkNames(
  records: readonly { readonly row: number; readonly athlete: string }[],
  athletes: readonly { readonly athlete: string }[],
): UnknownName[] {
  const known = new Set(athletes.map(({ athlete }) => nameKey(athlete)));
  const unknown = new Map<string, { name: string; firstRow: number; rows: number }>();
  let lastName = "";
  let lastUnknown: { rows: number } | null = null;
  for (const { row, athlete } of records) {
    if (athlete === lastName) {
      if (lastUnknown !== null) lastUnknown.rows++;
      continue;
    }
    lastName = athlete;
    lastUnknown = null;
    const key = nameKey(athlete);
    if (known.has(key)) continue;
    const entry = unknown.get(key) ?? { name: athlete, firstRow: row, rows: 0 };
    entry.rows++;
    unknown.set(key, entry);
    lastUnknown = entry;
  }
  if (unknown.size === 0) return [];
  const spelled = athletes.map(({ athlete }) => ({ athlete, spelling: spellingOf(athlete) }));
  return [...unknown.values()].map((entry) => {
    const written = spellingOf(entry.name);
    const near = spelled.filter(({ spelling }) => spellingLink(written, spelling) !== null);
    return { ...entry, near: near.map(({ athlete }) => athlete) };
  });
}
