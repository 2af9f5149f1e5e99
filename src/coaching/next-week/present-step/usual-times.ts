import { type Day, weekdayOfDay } from "../../calendar/day";
import { byUse } from "./by-use";

/** Sessions of late that tell an athlete's weekdays. */
const lateSessions = 12;

/** Usual start in minutes after midnight where no row says one (common practice, no source). */
export const usualMinute = 18 * 60;

/** Weekdays of the latest sessions, most used first; 0 Monday … 6 Sunday. `days` in order. */
export const usualWeekdays = (days: readonly Day[]): readonly number[] =>
  byUse(days.map(weekdayOfDay).slice(-lateSessions));
