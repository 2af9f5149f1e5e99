import { accept, type Outcome, refuse } from "../../../outcome";
import { exerciseKey } from "../../record/exercise-key";
import { isSquat } from "../exercises/is-squat";
import { type Cuts, fewestMoves } from "./fewest-moves";
import { plateChange } from "./plate-change";

/** One athlete's main lift in one room on one day. */
export type Lift = {
  readonly athlete: string;
  /** What is lifted alike: a bar on the hooks of a squat is not one on the floor. */
  readonly lift: string;
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
 * Shares bars among a session's lifters: lightest to heaviest, cut into one run of neighbours for each
 * rack, every cut tried. Of the shares that fit the time the one with the fewest plate moves is taken,
 * of equal ones the one that ends soonest. Different bars and different lifts never share a rack.
 *
 * @param racks racks that the room has
 * @param minutesASet one set with its change of plates and the walk to the bar
 * @param minutesOfRoom minutes the room is free for the main lift
 * @returns Refuses `racks-impossible`, `racks-too-few` (more kinds of bar and lift than racks) and
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
    (a, b) =>
      (kindOf(a) === kindOf(b) ? 0 : kindOf(a) < kindOf(b) ? -1 : 1) ||
      a.loadKg - b.loadKg ||
      (a.athlete < b.athlete ? -1 : 1),
  );
  if (order.length === 0) return accept({ racks: [], moves: 0, minutes: 0 });
  const bars = kindsOf(order);
  if (bars > racks) return refuse("racks-too-few", { bars, racks });
  const cut = fewestMoves(order, racks);
  const mostSets = Math.floor(minutesOfRoom / minutesASet + 1e-9);
  const allSets = order.reduce((sum, { sets }) => sum + sets, 0);
  const fit = cut(mostSets);
  if (!fit) {
    // How long the room would be needed: the least number of sets at which a share exists.
    const needed = leastOf(mostSets, allSets, (sets) => cut(sets) !== null);
    return refuse("room-too-short", { minutes: Math.ceil(needed * minutesASet), minutesOfRoom });
  }
  // Of shares with equally few moves the one that ends soonest: fewer sets never need fewer moves.
  const soonest = leastOf(
    0,
    longest(sharesOf(order, fit)),
    (sets) => cut(sets)?.moves === fit.moves,
  );
  const shares = sharesOf(order, cut(soonest)!);
  return accept({
    racks: shares,
    moves: fit.moves,
    minutes: longest(shares) * minutesASet,
  });
}

/** What is lifted alike, as `Lift.lift` says it: all squats are. */
export const liftedAlike = (exercise: string): string =>
  isSquat(exercise) ? "squat" : exerciseKey(exercise);

/** Who may share a rack with whom: one bar and one lift. */
export const kindOf = ({ lift, barKg }: Pick<Lift, "lift" | "barKg">): string =>
  `${String(barKg).padStart(7, "0")} ${lift}`;

/** How many bars must stand apart. */
export const kindsOf = (lifts: readonly Lift[]): number => new Set(lifts.map(kindOf)).size;

const longest = (shares: readonly RackShare[]) => Math.max(...shares.map(({ sets }) => sets));

/** Least number of sets that does, between one that does not and one that does; more never does worse. */
function leastOf(not: number, does: number, holds: (sets: number) => boolean): number {
  let below = not;
  let least = does;
  while (least - below > 1) {
    const middle = Math.floor((below + least) / 2);
    if (holds(middle)) least = middle;
    else below = middle;
  }
  return least;
}

function sharesOf(order: readonly Lift[], { starts }: Cuts): readonly RackShare[] {
  return starts.map((start, at) => shareOf(order.slice(start, starts[at + 1])));
}

function shareOf(lifts: readonly Lift[]): RackShare {
  let on: readonly number[] = [];
  const turns = lifts.map((lift) => {
    const change = plateChange(on, lift.plates);
    on = lift.plates;
    return { ...lift, ...change };
  });
  const moved = turns.reduce((sum, turn) => sum + turn.takeOff.length + turn.putOn.length, 0);
  return {
    barKg: lifts[0]!.barKg,
    turns,
    moves: 2 * moved,
    sets: lifts.reduce((sum, { sets }) => sum + sets, 0),
  };
}
