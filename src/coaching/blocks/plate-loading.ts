import { accept, type Outcome, refuse } from "../../outcome";
import type { Plate } from "../record/plate";

/** Loads differ by far more; doubles by less. */
export const hairKg = 1e-6;

/**
 * Plates for each side of the bar, heaviest first, innermost first.
 * A load is taken apart by trying the heaviest plate first and stepping back when the rest cannot be
 * made, for with few plates the greedy choice can miss a load that exists.
 *
 * @param loadKg whole load, kg
 * @param barKg bar with its collars, kg
 * @param plates plates of this gym; a mass whose number is not recorded is taken to be there
 * @returns kg of each plate on one side. Refuses `load-under-bar` and `load-not-on-plates`.
 */
export function platesASide(
  loadKg: number,
  barKg: number,
  plates: readonly Plate[],
): Outcome<number[]> {
  const sideKg = sideOf(loadKg, barKg);
  if (!sideKg.ok) return sideKg;
  const side = filled(sideKg.value, pairs(plates), 0);
  return side ? accept(side) : refuse("load-not-on-plates", { loadKg, barKg });
}

/**
 * The heaviest load that exists and is not above the one asked for: always down, ties too (a load
 * that stands midway between two is not a reason to lift more).
 * Refuses `load-under-bar`.
 */
export function roundDownToPlates(
  loadKg: number,
  barKg: number,
  plates: readonly Plate[],
): Outcome<number> {
  const sideKg = sideOf(loadKg, barKg);
  if (!sideKg.ok) return sideKg;
  let best = 0;
  for (const reachable of reachableSides(pairs(plates), sideKg.value)) {
    best = Math.max(best, reachable);
  }
  return accept(barKg + 2 * best);
}

/** What the plates of each side weigh together, kg. Refuses `load-under-bar`. */
function sideOf(loadKg: number, barKg: number): Outcome<number> {
  const sideKg = (loadKg - barKg) / 2;
  return sideKg >= -hairKg ? accept(sideKg) : refuse("load-under-bar", { loadKg, barKg });
}

/** Smallest difference between two loads: twice the lightest plate; 0 without plates. */
export function plateStepKg(plates: readonly Plate[]): number {
  const masses = pairs(plates).map(({ massKg }) => massKg);
  return masses.length === 0 ? 0 : 2 * masses[masses.length - 1]!;
}

type Pair = { readonly massKg: number; readonly count: number };

/** Plates by mass, heaviest first, as many as make pairs. Ten a side is more than a bar's sleeve takes. */
function pairs(plates: readonly Plate[]): readonly Pair[] {
  return plates
    .map(({ massKg, owned }) => ({ massKg, count: owned === null ? 10 : Math.floor(owned / 2) }))
    .filter(({ massKg, count }) => massKg > 0 && count > 0)
    .sort((a, b) => b.massKg - a.massKg);
}

function filled(sideKg: number, from: readonly Pair[], at: number): number[] | null {
  if (Math.abs(sideKg) <= hairKg) return [];
  const pair = from[at];
  if (!pair) return null;
  const most = Math.min(pair.count, Math.floor((sideKg + hairKg) / pair.massKg));
  for (let count = most; count >= 0; count--) {
    const rest = filled(sideKg - count * pair.massKg, from, at + 1);
    if (rest) return [...Array<number>(count).fill(pair.massKg), ...rest];
  }
  return null;
}

/** A pound is a whole number of these in a kilogram (0.45359237 kg), and half a pound is too. */
const parts = 1e9;

/** Every side that the plates can make up to a mass, kg, in whole parts to keep sums exact. */
function reachableSides(from: readonly Pair[], upToKg: number): number[] {
  const most = Math.round((upToKg + hairKg) * parts);
  let sides = new Set([0]);
  for (const { massKg, count } of from) {
    const plate = Math.round(massKg * parts);
    const next = new Set(sides);
    for (const side of sides) {
      for (let n = 1; n <= count && side + n * plate <= most; n++) next.add(side + n * plate);
    }
    sides = next;
  }
  return [...sides].map((side) => side / parts);
}
