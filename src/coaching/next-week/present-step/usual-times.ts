import { type Day, weekdayOfDay } from "../../calendar/day";
import { byUse } from "./by-use";

/** Sessions of late that tell an athlete's weekdays. */
const lateSessions = 12;

/** Usual start in minutes after midnight where no row says one (common practice, no source). */
export const usualMinute = 18 * 60;

/**
 * Weekdays of the latest sessions, most used first; 0 Monday … 6 Sunday. A week in which races moved
 * them tells nothing, where any other does.
 *
 * @param days in order
 */
export function usualWeekdays(
  days: readonly Day[],
  isOwnDay: (day: Day) => boolean = () => true,
): readonly number[] {
  const own = days.slice(-2 * lateSessions).filter(isOwnDay);
  return byUse((own.length > 0 ? own : days).map(weekdayOfDay).slice(-lateSessions));
}
