import type { Day } from "../../calendar/day";
import { type DayChoice, type GymDays, leastApart } from "../../season/gym-days";

/** The week's gym days: the best ones, or the day the coach has set and those of the best well apart from it. */
export function chosenDays(
  { best, all }: GymDays,
  set: Day | undefined,
  wanted: number,
): readonly DayChoice[] {
  if (set === undefined) return best;
  const first = all.find(({ day }) => day === set) ?? all[0]!;
  const others = best.filter(({ day }) => Math.abs(day - set) >= leastApart);
  return [first, ...others.slice(0, wanted - 1)];
}
