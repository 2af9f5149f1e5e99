import type { SpeedSet } from "../series/speed-set";
import { speedOnLine } from "./expected-speed";
import type { LeadingSets } from "./leading-sets";
import type { LineFit } from "./line-fit";

/**
 * Speed that the set leading a day, its marker or its first work set, usually has at a load, m/s: the
 * line's, and how far the squad's sets of that kind lie off their lines.
 */
export function leadSpeed(line: LineFit, { offset }: LeadingSets, loadKg: number): number {
  return speedOnLine(line, loadKg).speed + offset;
}

/** Sets of the squad that an athlete's own ones are steadied by. */
const squadWorth = 10;

/**
 * How far the mean of a leading set's repetitions usually lies under its fastest, m/s: lines read the
 * fastest, while at the rack the mean decides. The athlete's own sets, steadied by the squad's.
 *
 * @param own the athlete's sets in the setting of the line, in order of day
 * @param squad every athlete's sets of that lift
 * @returns 0 for an athlete whose single repetitions were not kept: what is typed is what was kept
 */
export function meanUnderFastest(
  own: readonly SpeedSet[],
  squad: readonly (readonly SpeedSet[])[],
  kind: "marker" | "work",
): number {
  if (own[own.length - 1]?.set.repSpeeds.length === 0) return 0;
  const mine = gaps(own, kind);
  const all = squad.flatMap((sets) => gaps(sets, kind));
  if (all.length === 0) return 0;
  const worth = (squadWorth * sum(all)) / all.length;
  return (worth + sum(mine)) / (squadWorth + mine.length);
}

/** Fastest less mean of every leading set with two repetitions or more. */
function gaps(sets: readonly SpeedSet[], kind: "marker" | "work"): readonly number[] {
  return sets.flatMap(({ leads, speed, set }) => {
    const reps = set.repSpeeds.flatMap((one) => one ?? []);
    return leads === kind && reps.length > 1 ? [speed - sum(reps) / reps.length] : [];
  });
}

const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
