import { type Day, weekdayOfDay } from "../../calendar/day";
import { firstOfDays } from "../../hold/measures/setting-notes";
import { grouped } from "../../series/grouped";
import { upToDay } from "../../series/span-of-days";
import type { Setting, SpeedSet } from "../../series/speed-set";

/** Sessions of late that tell what a weekday is trained with, and those of it among them (common practice, no source). */
const lateSessions = 6;
const fewestOfWeekday = 2;

/**
 * The setting of a day's weekday, where tools, bars or gyms are used in turn: all late sessions of that
 * weekday had it, and all of another weekday had another. Undefined where weekdays tell nothing, as
 * after a change for good.
 *
 * @param sets an athlete's of one lift, in order of day
 */
export function weekdaySetting(sets: readonly SpeedSet[], day: Day): Setting | undefined {
  const late = firstOfDays(upToDay(sets, day - 1)).slice(-lateSessions);
  const settings = new Map(
    [...grouped(late, (set) => weekdayOfDay(set.day))].flatMap(([weekday, [first, ...more]]) =>
      more.length + 1 >= fewestOfWeekday && more.every(({ setting }) => setting === first!.setting)
        ? [[weekday, first!.setting] as const]
        : [],
    ),
  );
  return new Set(settings.values()).size > 1 ? settings.get(weekdayOfDay(day)) : undefined;
}
