import type { Unit } from "../../value/units";
import type { Placed, Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { SetGroup } from "./scheme";
import { spreadSpeeds } from "./spread-speeds";

/** Where the sets of one shorthand cell stand, and what else is known of them. */
export type SetsPlace = {
  readonly row: number;
  readonly schemeColumn: number;
  readonly speedColumn: number;
  /** Fields every set of the cell shares: day, athlete, exercise and the like. */
  readonly shared: Readonly<Record<string, Placed | undefined>>;
  readonly note: Placed | undefined;
  /** Unit of loads that name none themselves; left out: as the load's heading says. */
  readonly unit?: Unit | null;
};

/** Writes one flat row for each set of a shorthand cell; false when the speeds fit no set. */
export function emitSets(
  into: Unfolded,
  place: SetsPlace,
  groups: readonly SetGroup[],
  speeds: readonly (number | null)[],
  said: "each set" | "each rep" | null,
): boolean {
  const sets = groups.reduce((sum, group) => sum + group.sets, 0);
  const spread = spreadSpeeds(speeds, sets, groups[0]?.reps ?? null, said);
  const shared = into.prepare(place.shared);
  let number = 0;
  for (const group of groups)
    for (let repeat = 0; repeat < group.sets; repeat++) {
      const speed = spread?.[number];
      const written =
        speed === undefined
          ? ""
          : speed.reps.length > 0
            ? speed.reps.map((rep) => rep ?? "-").join(" / ")
            : (speed.single ?? "");
      const load = withUnit(group.load ?? "", group.unit ?? place.unit ?? null);
      const own: Record<string, Placed> = {
        set: [number + 1, place.schemeColumn],
        reps: [group.reps ?? "", place.schemeColumn],
        speed: [written, place.speedColumn],
      };
      if (group.load !== null || place.shared.load === undefined)
        own.load = [load, place.schemeColumn];
      if (number === 0 && place.note !== undefined) own.note = place.note;
      into.emit(place.row, own, shared);
      number++;
    }
  return spread !== null;
}
