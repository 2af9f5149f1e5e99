import { type Day, mondayOf } from "../calendar/day";

/** A session no further back than this says that the athlete is in training (common practice, no source). */
const inTrainingDays = 7;

/**
 * Days between an athlete's last session and a planned one, for what a restart takes off.
 *
 * Weeks are planned ahead, so sessions that are still to come are no days off: whoever is in training
 * is taken to train until the planned week, on the days on which sets may be proposed. A break that
 * lasts by now is taken to end in the first week with such a day.
 *
 * @param lastDay day of the last session in the rows
 * @param firstDay first session of the planned week, which begins on `monday`
 * @param mayLift false on days on which nothing may be proposed
 * @returns days
 */
export function gapBefore({
  lastDay,
  firstDay,
  monday,
  asOf,
  mayLift,
}: {
  readonly lastDay: Day;
  readonly firstDay: Day;
  readonly monday: Day;
  readonly asOf: Day;
  readonly mayLift: (day: Day) => boolean;
}): number {
  if (asOf - lastDay <= inTrainingDays) {
    for (let day = monday - 1; day > asOf; day--) if (mayLift(day)) return firstDay - day;
    return firstDay - lastDay;
  }
  for (let day = mondayOf(asOf) + 7; day < monday; day++) {
    if (mayLift(day)) return mondayOf(day) + (firstDay - monday) - lastDay;
  }
  return firstDay - lastDay;
}
