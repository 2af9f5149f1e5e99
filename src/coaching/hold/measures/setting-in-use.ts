import type { Day } from "../../calendar/day";
import { upToDay } from "../../series/span-of-days";
import type { Setting, SpeedSet } from "../../series/speed-set";
import { firstOfDays } from "./setting-notes";

/**
 * Tool, mean or peak, bar and gym of the latest set up to a day, if one of the last two sessions had
 * them too: what neither had tells nothing of the next one (common practice, no source).
 *
 * @param sets an athlete's of one lift, in order of day
 */
export function settingInUse(sets: readonly SpeedSet[], day: Day): Setting | undefined {
  const before = upToDay(sets, day);
  const setting = before[before.length - 1]?.setting;
  const lastTwo = firstOfDays(sets).slice(-2);
  return lastTwo.some((set) => set.setting === setting) ? setting : undefined;
}
