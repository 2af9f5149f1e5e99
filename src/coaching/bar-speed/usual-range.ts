import { studentLimit } from "../../statistics/limits";
import { meanOf } from "../../statistics/spread";
import type { SessionPattern } from "./set-to-set";

/** The range of change at one set that ordinary sessions of an athlete stay in, log percent. */
export type UsualRange = { readonly middle: number; readonly low: number; readonly high: number };

/** Earlier sessions before a habit is known. */
const leastSessions = 4;
/** Usual SD of one set against the first, percent, and what it is worth (simulation, no source). */
const usualSpread = 3;
const usualWorth = 10;
/** What the squad's SD is worth against the athlete's own. */
const squadWorth = 9;

/** Nine ordinary sessions in ten have no set outside its range. */
const insideAtAllSets = 0.9;

/**
 * Where the athlete's next session should lie at one set: the prediction interval of a new value
 * from the earlier ones, mean ± t·s·√(1 + 1/n), its SD steadied by the squad's. The uncertainty of
 * the habit itself is in it: with few sessions the range is wide.
 *
 * @param past log changes at this set in earlier sessions, percent
 * @param laterSets sets judged in this session
 * @returns null with fewer than four earlier sessions
 */
export function usualRange(
  past: readonly number[],
  squadSpread: number,
  laterSets: number,
): UsualRange | null {
  const sessions = past.length;
  if (sessions < leastSessions) return null;
  const middle = meanOf(past);
  const squares = past.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  const freedom = squadWorth + sessions - 1;
  const spread = Math.sqrt((squadWorth * squadSpread ** 2 + squares) / freedom);
  // Šidák 1967: sets that each stay inside with this share all do with nine in ten.
  const percent = 100 * insideAtAllSets ** (1 / laterSets);
  const half = studentLimit(percent, freedom) * spread * Math.sqrt(1 + 1 / sessions);
  return { middle, low: middle - half, high: middle + half };
}

/** SD of a set against the first, within athletes and sets, pooled over the squad. */
export function squadHabitSpread(squad: readonly (readonly SessionPattern[])[]): number {
  let squares = usualWorth * usualSpread ** 2;
  let freedom = usualWorth;
  for (const sessions of squad) {
    const bySet = new Map<number, number[]>();
    for (const { later } of sessions) {
      for (const { set, logChange } of later) {
        const values = bySet.get(set);
        if (values) values.push(logChange);
        else bySet.set(set, [logChange]);
      }
    }
    for (const values of bySet.values()) {
      const mean = meanOf(values);
      for (const value of values) squares += (value - mean) ** 2;
      freedom += values.length - 1;
    }
  }
  return Math.sqrt(squares / freedom);
}
