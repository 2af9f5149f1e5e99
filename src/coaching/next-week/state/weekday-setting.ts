import { type Day, weekdayOfDay } from "../../calendar/day";
import { firstOfDays } from "../../hold/measures/setting-notes";
import { upToDay } from "../../series/span-of-days";
import type { Setting, SpeedSet } from "../../series/speed-set";

/** Sessions of late that tell what a weekday is trained with, and those of it among them (common practice, no source). */
const lateSessions = 6;
const fewestOfWeekday = 2;

/**
 * The setting of a day's weekday, where tools, bars or gyms are used in turn: all late sessions of that
 * weekday had it and some of another had not. Undefined where weekdays tell nothing.
 *
 * @param sets an athlete's of one lift, in order of day
 */
export function weekdaySetting(sets: readonly SpeedSet[], day: Day): Setting | undefined {
  const late = firstOfDays(upToDay(sets, day - 1)).slice(-lateSessions);
  const same = late.filter((set) => weekdayOfDay(set.day) === weekdayOfDay(day));
  const setting = same[0]?.setting;
  const isOwn = same.length >= fewestOfWeekday && same.every((set) => set.setting === setting);
  return isOwn && late.some((set) => set.setting !== setting) ? setting : undefined;
}
