import { accept, type Outcome, refuse } from "../../outcome";

/** One athlete's main lift in one room on one day. */
export type Lift = {
  readonly athlete: string;
  readonly loadKg: number;
  readonly barKg: number;
  /** kg of each plate on one side, heaviest first. */
  readonly plates: readonly number[];
  readonly sets: number;
};

/** One athlete's place at a rack, and what to change on each side before the first set. */
export type RackTurn = Lift & {
  readonly takeOff: readonly number[];
  readonly putOn: readonly number[];
};

/** Who shares one bar, in order of load. */
export type RackShare = {
  readonly barKg: number;
  readonly turns: readonly RackTurn[];
  /** Plates moved on both sides when the turns are taken one athlete after another. */
  readonly moves: number;
  /** Sets lifted at this bar, one after another. */
  readonly sets: number;
};

export type RackPlan = {
  readonly racks: readonly RackShare[];
  readonly moves: number;
  /** Minutes of the fullest rack. */
  readonly minutes: number;
};

/**
 * Plates are moved on both sides, from a bar that stands empty. Plates of one mass that stay are not
 * touched: heavier plates lie inside, so a plate can stay only while all inside it stay.
 */
export function plateChange(
  from: readonly number[],
  to: readonly number[],
): { readonly takeOff: readonly number[]; readonly putOn: readonly number[] } {
  let same = 0;
  while (same < from.length && same < to.length && from[same] === to[same]) same++;
  return { takeOff: from.slice(same), putOn: to.slice(same) };
}

/**
 * Shares bars among a session's lifters: lightest to heaviest, cut into one run of neighbours for each
 * rack, every cut tried. Of the shares that fit the time the one with the fewest plate moves is taken,
 * of equal ones the one that ends soonest. Different bars never share a rack.
 *
 * @param racks racks that the room has
 * @param minutesASet one set with its change of plates and the walk to the bar
 * @param minutesOfRoom minutes the room is free for the main lift
 * @returns Refuses `racks-impossible`, `racks-too-few` (more kinds of bar than racks) and
 * `room-too-short` (facts `minutes` needed at best, `minutesOfRoom`)
 */
export function rackPlan(
  lifts: readonly Lift[],
  racks: number,
  minutesASet: number,
  minutesOfRoom: number,
): Outcome<RackPlan> {
  if (!(Number.isInteger(racks) && racks >= 1 && racks <= 20)) {
    return refuse("racks-impossible", { racks });
  }
  const order = [...lifts].sort(
    (a, b) => a.barKg - b.barKg || a.loadKg - b.loadKg || (a.athlete < b.athlete ? -1 : 1),
  );
  if (order.length === 0) return accept({ racks: [], moves: 0, minutes: 0 });
  const bars = new Set(order.map(({ barKg }) => barKg)).size;
  if (bars > racks) return refuse("racks-too-few", { bars, racks });
  const mostSets = Math.floor(minutesOfRoom / minutesASet + 1e-9);
  const fit = fewestMoves(order, racks, mostSets);
  if (!fit) {
    // How long the room would be needed: the least number of sets at which a share exists.
    let needed = mostSets;
    while (!fewestMoves(order, racks, needed)) needed++;
    return refuse("room-too-short", { minutes: Math.ceil(needed * minutesASet), minutesOfRoom });
  }
  // Of shares with equally few moves the one that ends soonest.
  let soonest = fit;
  for (let sets = longest(fit) - 1; sets > 0; sets--) {
    const tighter = fewestMoves(order, racks, sets);
    if (!tighter || movesOf(tighter) > movesOf(fit)) break;
    soonest = tighter;
  }
  return accept({
    racks: soonest,
    moves: movesOf(soonest),
    minutes: longest(soonest) * minutesASet,
  });
}

const movesOf = (shares: readonly RackShare[]) => shares.reduce((sum, { moves }) => sum + moves, 0);
const longest = (shares: readonly RackShare[]) => Math.max(...shares.map(({ sets }) => sets));

/** Best cut of the ordered lifts into at most so many runs, none with more sets; null without one. */
function fewestMoves(
  order: readonly Lift[],
  racks: number,
  mostSets: number,
): readonly RackShare[] | null {
  // best[k][n]: the first n lifts at k racks.
  let best: (readonly RackShare[] | null)[] = order.map(() => null);
  best = [[], ...best];
  let answer: readonly RackShare[] | null = null;
  for (let rack = 1; rack <= racks; rack++) {
    const next: (readonly RackShare[] | null)[] = [null, ...order.map(() => null)];
    for (let end = 1; end <= order.length; end++) {
      for (let start = end - 1; start >= 0; start--) {
        const before = best[start];
        const share = shareOf(order.slice(start, end));
        if (!share || share.sets > mostSets) break;
        if (!before) continue;
        const whole = [...before, share];
        const present = next[end];
        if (!present || movesOf(whole) < movesOf(present)) next[end] = whole;
      }
    }
    best = next;
    const whole = best[order.length];
    if (whole && (!answer || movesOf(whole) < movesOf(answer))) answer = whole;
  }
  return answer;
}

function shareOf(lifts: readonly Lift[]): RackShare | null {
  const barKg = lifts[0]!.barKg;
  if (lifts.some((lift) => lift.barKg !== barKg)) return null;
  let on: readonly number[] = [];
  const turns = lifts.map((lift) => {
    const change = plateChange(on, lift.plates);
    on = lift.plates;
    return { ...lift, ...change };
  });
  const moved = turns.reduce((sum, turn) => sum + turn.takeOff.length + turn.putOn.length, 0);
  return {
    barKg,
    turns,
    moves: 2 * moved,
    sets: lifts.reduce((sum, { sets }) => sum + sets, 0),
  };
}
