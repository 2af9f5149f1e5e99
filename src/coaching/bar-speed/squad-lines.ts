import { type Outcome, refuse } from "../../outcome";
import { exerciseKey } from "../record/exercise-key";
import type { LoadedSet, Setting, SpeedSet } from "../series/speed-set";
import type { SquadIndex } from "../series/squad-index";
import { type LineSettings, usualLineSettings } from "./line-settings";
import { type LoadSpeedLine, loadSpeedLine } from "./load-speed-line";
import { type SquadLift, squadLift } from "./squad-lift";

/** A line, how the squad's leading sets lie around theirs, and the sets left out of it as they were taken in another setting than the latest. */
export type AthleteLine = LoadSpeedLine & {
  readonly leads: SquadLift["leads"];
  readonly otherSettingSets: number;
};

/**
 * Every athlete's line of one lift on the index's last day, each steadied by the squad; ask by name.
 * The lines read the setting (tool, mean or peak, bar, gym) of the athlete's latest session.
 *
 * Refuses `athlete-not-in-sets`, `no-speed-sets` for this lift, and what `loadSpeedLine` refuses.
 */
export function squadLines({
  index,
  exercise,
  settings = usualLineSettings,
}: {
  readonly index: SquadIndex;
  readonly exercise: string;
  readonly settings?: LineSettings;
}): (athlete: string) => Outcome<AthleteLine> {
  const lift = exerciseKey(exercise);
  const squad = squadLift(latestOfAll(index, lift), index.asOf, settings);
  return (name) => {
    const athlete = index.of(name);
    if (!athlete) return refuse("athlete-not-in-sets", { athlete: name });
    const own = athlete.lifts.get(lift) ?? [];
    const rows = latestRows(own);
    const line = loadSpeedLine(rows, index.asOf, squad.prior, squad.settings, squad.leads.work);
    if (!line.ok) return refuse(line.refusal.code, { ...line.refusal.facts, exercise });
    const withLoad = lineRows(own).length;
    const otherSettingSets = withLoad - rows.length;
    return { ok: true, value: { ...line.value, leads: squad.leads, otherSettingSets } };
  };
}

/** Each athlete's rows of one lift in the setting of the latest. */
export function latestOfAll(
  { athletes }: SquadIndex,
  lift: string,
): readonly (readonly LoadedSet[])[] {
  return [...athletes.values()].map(({ lifts }) => latestRows(lifts.get(lift) ?? []));
}

/** Sets with a load, as the line reads them; only those of one setting when it is given. */
export function lineRows(sets: readonly SpeedSet[], setting?: Setting): readonly LoadedSet[] {
  const reads = (set: SpeedSet): set is LoadedSet =>
    set.loadKg !== null && (setting === undefined || set.setting === setting);
  return sets.every(reads) ? sets : sets.filter(reads);
}

/** The same of the setting of the latest set. */
export function latestRows(sets: readonly SpeedSet[]): readonly LoadedSet[] {
  return lineRows(sets, sets[sets.length - 1]?.setting);
}
