import { plateChange } from "./plate-change";

/** What a lift brings to a rack: its kind and bar, kg of each plate on one side heaviest first, its sets. */
type Lift = {
  readonly lift: string;
  readonly barKg: number;
  readonly plates: readonly number[];
  readonly sets: number;
};

/** Lifts in order of load cut into runs, one a rack: where each run begins, and the plates moved in all. */
export type Cuts = { readonly starts: readonly number[]; readonly moves: number };

/**
 * Best cut of ordered lifts into at most so many runs of neighbours, fewest plates moved on both
 * sides first; null when no cut keeps every run within the sets. A run holds one kind of bar and lift. What a
 * run moves is a sum over its neighbours, so each try takes racks × lifts × lifts in a run steps.
 *
 * @returns the cut for a greatest number of sets a run
 */
export function fewestMoves(
  order: readonly Lift[],
  racks: number,
): (mostSets: number) => Cuts | null {
  const length = order.length;
  /** Up to each lift: sets, and plates moved from one lift to the next. */
  const sets = [0];
  const moved = [0];
  for (const [at, lift] of order.entries()) {
    const change = plateChange(order[at - 1]?.plates ?? lift.plates, lift.plates);
    sets.push(sets[at]! + lift.sets);
    moved.push(moved[at]! + change.takeOff.length + change.putOn.length);
  }
  const movesOf = (start: number, end: number) =>
    2 * (order[start]!.plates.length + moved[end]! - moved[start + 1]!);

  return (mostSets) => {
    /** Moves of the first n lifts at the racks so far, and by rack where the last run begins. */
    let best = [0, ...order.map(() => Number.POSITIVE_INFINITY)];
    const begins: number[][] = [];
    let answer: { moves: number; racks: number } | null = null;
    for (let rack = 1; rack <= racks; rack++) {
      const next = Array<number>(length + 1).fill(Number.POSITIVE_INFINITY);
      const begin = Array<number>(length + 1).fill(-1);
      for (let end = 1; end <= length; end++) {
        const { lift, barKg } = order[end - 1]!;
        for (let start = end - 1; start >= 0; start--) {
          const first = order[start]!;
          if (first.barKg !== barKg || first.lift !== lift) break;
          if (sets[end]! - sets[start]! > mostSets) break;
          const moves = best[start]! + movesOf(start, end);
          if (moves < next[end]!) {
            next[end] = moves;
            begin[end] = start;
          }
        }
      }
      begins.push(begin);
      best = next;
      const moves = best[length]!;
      if (moves < (answer?.moves ?? Number.POSITIVE_INFINITY)) answer = { moves, racks: rack };
    }
    if (!answer) return null;
    const starts: number[] = [];
    for (let rack = answer.racks, end = length; rack > 0; rack--) {
      end = begins[rack - 1]![end]!;
      starts.unshift(end);
    }
    return { starts, moves: answer.moves };
  };
}
