import { accept, type Outcome } from "../outcome";
import { usable } from "./usable";

/** Rearrangements counted one by one up to here; past it as many are drawn. */
const mostCounted = 200_000;
const draws = 20_000;
/** Sums that differ by rounding alone are ties, and ties count. */
const hair = 1e-9;

/** `exact` says whether all rearrangements were counted. Two-sided p. */
export type Permutation = { readonly p: number; readonly exact: boolean };

/**
 * Paired permutation test (Fisher 1935, §21): share of all ways to turn signs whose sum is as far from
 * 0 as the one found. Refuses `values-too-few` (none), `value-not-finite`.
 *
 * @param chance numbers in [0, 1), asked only when there are more than 17 differences
 */
export function pairedPermutation(
  differences: readonly number[],
  chance: () => number,
): Outcome<Permutation> {
  const given = usable(differences, 1);
  if (!given.ok) return given;
  const total = Math.abs(differences.reduce((sum, value) => sum + value, 0));
  const edge = total - hair * differences.reduce((sum, value) => sum + Math.abs(value), 0);
  const ways = 2 ** differences.length;
  const turned = (isTurned: (index: number) => boolean) =>
    Math.abs(differences.reduce((sum, value, i) => sum + (isTurned(i) ? -value : value), 0)) >=
    edge;
  if (ways > mostCounted) return accept(drawn(() => turned(() => chance() < 0.5)));
  let far = 0;
  for (let way = 0; way < ways; way++) if (turned((i) => (way & (1 << i)) !== 0)) far++;
  return accept({ p: far / ways, exact: true });
}

/**
 * Two-group permutation test: share of all splits whose means differ as much, either way.
 * Refuses `values-too-few` (an empty group), `value-not-finite`.
 */
export function groupPermutation(
  first: readonly number[],
  second: readonly number[],
  chance: () => number,
): Outcome<Permutation> {
  const one = usable(first, 1);
  if (!one.ok) return one;
  const two = usable(second, 1);
  if (!two.ok) return two;
  const all = [...first, ...second];
  const size = first.length;
  const total = all.reduce((sum, value) => sum + value, 0);
  const expected = (total * size) / all.length;
  const off = (sum: number) => Math.abs(sum - expected);
  const edge =
    off(first.reduce((sum, value) => sum + value, 0)) -
    hair * all.reduce((sum, value) => sum + Math.abs(value), 0);
  if (splits(all.length, size) > mostCounted) {
    return accept(drawn(() => off(drawnSum(all, size, chance)) >= edge));
  }
  let far = 0;
  let ways = 0;
  const choose = (from: number, left: number, sum: number): void => {
    if (left === 0) {
      ways++;
      if (off(sum) >= edge) far++;
      return;
    }
    for (let i = from; i <= all.length - left; i++) choose(i + 1, left - 1, sum + all[i]!);
  };
  choose(0, size, 0);
  return accept({ p: far / ways, exact: true });
}

/** The order found counts as one of the draws, so p is never 0 (Phipson & Smyth 2010). */
function drawn(isFar: () => boolean): Permutation {
  let far = 1;
  for (let i = 0; i < draws; i++) if (isFar()) far++;
  return { p: far / (draws + 1), exact: false };
}

function drawnSum(all: readonly number[], size: number, chance: () => number): number {
  const pool = [...all];
  let sum = 0;
  for (let i = 0; i < size; i++) {
    const at = i + Math.floor(chance() * (pool.length - i));
    sum += pool[at]!;
    pool[at] = pool[i]!;
  }
  return sum;
}

function splits(all: number, size: number): number {
  let ways = 1;
  for (let i = 1; i <= size; i++) ways = (ways * (all - size + i)) / i;
  return ways;
}
