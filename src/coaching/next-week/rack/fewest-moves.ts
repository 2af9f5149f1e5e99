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

/** A run of neighbours that may share a rack: plates moved on both sides from an empty bar to its last lift. */
type Run = { readonly start: number; readonly sets: number; readonly moves: number };

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
  const runs = runsUpToEach(order);
  return (mostSets) => {
    /** Best cut of the first n lifts into as many runs as racks so far. */
    let cuts: readonly (Cuts | null)[] = [{ starts: [], moves: 0 }];
    let best: Cuts | null = null;
    for (let rack = 0; rack < racks; rack++) {
      cuts = [null, ...runs.map((last) => withLastRun(cuts, last, mostSets))];
      const whole = cuts[order.length];
      if (whole && (best === null || whole.moves < best.moves)) best = whole;
    }
    return best;
  };
}

/** The runs that end at each lift, the shortest first. */
function runsUpToEach(order: readonly Lift[]): readonly (readonly Run[])[] {
  const moved = order.map((lift, at) => {
    const { takeOff, putOn } = plateChange(order[at - 1]?.plates ?? [], lift.plates);
    return takeOff.length + putOn.length;
  });
  return order.map(({ barKg, lift }, end) => {
    const runs: Run[] = [];
    let sets = 0;
    let between = 0;
    for (let start = end; start >= 0; start--) {
      const first = order[start]!;
      if (first.barKg !== barKg || first.lift !== lift) break;
      sets += first.sets;
      runs.push({ start, sets, moves: 2 * (first.plates.length + between) });
      between += moved[start]!;
    }
    return runs;
  });
}

/** A cut of the lifts before one of these runs, and the run: fewest moves first, then the shortest run. */
function withLastRun(
  cuts: readonly (Cuts | null)[],
  runs: readonly Run[],
  mostSets: number,
): Cuts | null {
  let best: Cuts | null = null;
  for (const run of runs) {
    const before = cuts[run.start];
    if (!before || run.sets > mostSets) continue;
    const moves = before.moves + run.moves;
    if (best === null || moves < best.moves)
      best = { starts: [...before.starts, run.start], moves };
  }
  return best;
}
