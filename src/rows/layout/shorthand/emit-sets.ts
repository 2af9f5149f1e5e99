import type { Unit } from "../../value/units";
import type { Placed } from "../flat-rows";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { SetGroup } from "./scheme";
import { type SetSpeeds, type SpeedsSaid, spreadSpeeds } from "./spread-speeds";

/** Where the sets of one shorthand cell stand, and what else is known of them. */
export type SetsPlace = {
  readonly row: number;
  readonly schemeColumn: number;
  readonly speedColumn: number;
  /** Fields every set of the cell shares: day, athlete, exercise and the like. */
  readonly shared: Readonly<Record<string, Placed | undefined>>;
  readonly note: Placed | undefined;
  /** Sets of the same exercise written above, after which these are numbered. */
  readonly shorthandSets?: number;
  /** Stands for the number of each: "wu". */
  readonly label?: Placed | undefined;
  /** Unit of loads that name none themselves; left out: as the load's heading says. */
  readonly unit?: Unit | null;
};

/** Writes one flat row for each set of a shorthand cell; speeds that fit no set are reported. */
export function emitSets(
  into: Unfolded,
  place: SetsPlace,
  groups: readonly SetGroup[],
  speeds: readonly (number | null)[],
  said: SpeedsSaid,
): void {
  const repsOf = groups.flatMap(({ sets, reps }) => Array<number | null>(sets).fill(reps));
  const fit = spreadSpeeds(speeds, repsOf, said);
  const spread = typeof fit === "string" ? null : fit;
  const shared = into.prepare(place.shared);
  let number = 0;
  for (const group of groups)
    for (let repeat = 0; repeat < group.sets; repeat++) {
      into.emit(place.row, setCells(place, group, number, spread?.[number]), shared);
      number++;
    }
  if (fit === "unsettled") into.log.addAtSource("speeds-unsettled", place.row, place.speedColumn);
  if (fit === "too many")
    into.log.addAtSource("speeds-too-many", place.row, place.speedColumn, {
      speeds: speeds.length,
      sets: repsOf.length,
      reps: repsOf[0] ?? 0,
      said: said ?? "",
    });
}

/** What the set of that number, from 0, says beyond what all sets of its cell share. */
function setCells(
  place: SetsPlace,
  { load, unit, reps }: SetGroup,
  number: number,
  speed: SetSpeeds | undefined,
): Record<string, Placed | undefined> {
  const { schemeColumn, shorthandSets = 0 } = place;
  const cells: Record<string, Placed | undefined> = {
    set: place.label ?? [shorthandSets + number + 1, schemeColumn],
    speed: [speed === undefined ? "" : speedWritten(speed), place.speedColumn],
  };
  if (load !== null || place.shared.load === undefined)
    cells.load = [withUnit(load ?? "", unit ?? place.unit ?? null), schemeColumn];
  if (reps !== null) cells.reps = [reps, schemeColumn];
  if (number === 0) cells.note = place.note;
  return cells;
}

const speedWritten = ({ reps, single }: SetSpeeds) =>
  reps.length > 0 ? reps.join(" / ") : (single ?? "");
