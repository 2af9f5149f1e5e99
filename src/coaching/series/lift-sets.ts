import type { Day } from "../calendar/day";
import type { LiftingSet } from "../record/lifting-set";
import { rowsBefore } from "./span-of-days";
import { type SpeedSet, withLeads } from "./speed-set";

/**
 * One athlete's marker and work sets of one lift that have a speed, in order of day and of doing. Speed
 * sets are made when they are asked for: a question about the last sessions of a million rows never
 * holds more of them than it asks about. All of them are kept once they are asked for again.
 */
export class LiftSets {
  private asked = false;
  private kept: readonly SpeedSet[] | null = null;

  constructor(
    readonly sets: readonly LiftingSet[],
    private readonly speedSetOf: (set: LiftingSet) => SpeedSet | null,
  ) {}

  get length(): number {
    return this.sets.length;
  }

  /** Those from a day on. */
  fromDay(day: Day): readonly SpeedSet[] {
    return this.speedSets(rowsBefore(this.sets, day));
  }

  /** Those from place `start` up to, not including, `end`, which both lie between two days. */
  speedSets(start = 0, end = this.length): readonly SpeedSet[] {
    if (start > 0 || end < this.length) return this.made(start, end);
    if (this.kept !== null) return this.kept;
    const all = this.made(0, this.length);
    if (this.asked) this.kept = all;
    this.asked = true;
    return all;
  }

  private made(start: number, end: number): readonly SpeedSet[] {
    const made: SpeedSet[] = [];
    for (let at = start; at < end; at++) made.push(this.speedSetOf(this.sets[at]!)!);
    return withLeads(made);
  }
}

const none = new LiftSets([], () => null);

/** An athlete's sets of a lift by `exerciseKey`, without any where there are none. */
export function liftSets(
  { lifts }: { readonly lifts: ReadonlyMap<string, LiftSets> },
  lift: string,
): LiftSets {
  return lifts.get(lift) ?? none;
}
