import { meanOf, middleOf } from "../../statistics/spread";
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

/**
 * How far the mean of an athlete's leading sets usually lies under their fastest repetition, m/s: lines
 * read the fastest, while at the rack the mean decides. The median over sets, for one repetition misread
 * takes a set's mean far down.
 *
 * @param sets the athlete's, in the setting of the line
 * @returns 0 where single repetitions were not kept: what is typed is what was kept
 */
export function meanUnderFastest(sets: readonly SpeedSet[], kind: "marker" | "work"): number {
  const under = sets.flatMap(({ leads, speed, set }) => {
    const reps = set.repSpeeds.flatMap((one) => one ?? []);
    return leads !== kind || reps.length === 0 ? [] : [speed - meanOf(reps)];
  });
  return under.length === 0 ? 0 : middleOf(under);
}
