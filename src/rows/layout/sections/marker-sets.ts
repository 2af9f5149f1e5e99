import { plainWords } from "../../header/header-words";
import { setKinds } from "../../table/set-kinds";
import type { Placed } from "../flat-rows";
import type { Meanings } from "../meanings";

/** A set on its way to the flat rows. */
export type PendingSet = {
  readonly row: number;
  /** The load as written, also when it is not settled. */
  readonly writtenLoad: unknown;
  readonly flat: Record<string, Placed | undefined>;
  readonly meanings?: Meanings;
};

// A word that is known: nothing is told of it, wherever it stands.
const marker: Placed = ["marker", -1];

/**
 * Marks the marker sets among warm-ups: the one noted "last w/u", and in every other session the
 * last warm-up before the first work set when it has that same load.
 */
export function markMarkerSets(sets: readonly PendingSet[]): void {
  const loads = new Set<string>();
  for (const set of sets)
    if (isWarmUp(set) && /\blast (w\/?u|warm)|\bmarker\b/.test(plainWords(set.flat.note?.[0]))) {
      set.flat.kind = marker;
      loads.add(key(set));
    }
  sets.forEach((set, at) => {
    const next = sets[at + 1];
    const last = next !== undefined && session(next) === session(set) && !isWarmUp(next);
    if (isWarmUp(set) && last && loads.has(key(set))) set.flat.kind = marker;
  });
}

function isWarmUp(set: PendingSet): boolean {
  const said = set.flat.kind?.[0] ?? set.flat.set?.[0];
  const kind = setKinds.get(plainWords(said));
  return kind === "warm-up" || kind === "marker";
}

function session(set: PendingSet): string {
  return [set.flat.day![0], set.flat.athlete![0], set.flat.exercise![0]].join("|");
}

function key(set: PendingSet): string {
  return [set.flat.athlete![0], set.flat.exercise![0], set.writtenLoad].join("|");
}
