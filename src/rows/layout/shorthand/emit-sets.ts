import type { Unit } from "../../value/units";
import type { Placed, Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { SetGroup } from "./scheme";
import { type SpeedsSaid, spreadSpeeds } from "./spread-speeds";

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
      const speed = spread?.[number];
      const written =
        speed === undefined
          ? ""
          : speed.reps.length > 0
            ? speed.reps.join(" / ")
            : (speed.single ?? "");
      const load = withUnit(group.load ?? "", group.unit ?? place.unit ?? null);
      const own: Record<string, Placed | undefined> = {
        set: place.label ?? [(place.shorthandSets ?? 0) + number + 1, place.schemeColumn],
        speed: [written, place.speedColumn],
      };
      if (group.load !== null || place.shared.load === undefined)
        own.load = [load, place.schemeColumn];
      if (group.reps !== null) own.reps = [group.reps, place.schemeColumn];
      if (number === 0) own.note = place.note;
      into.emit(place.row, own, shared);
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
