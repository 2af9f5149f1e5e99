import type { Day } from "../../calendar/day";

/** A session no further back than this says that the athlete is in training (common practice, no source). */
const inTrainingDays = 7;

/** Whether an athlete whose last session was on a day is in training. */
export const inTraining = (lastDay: Day, asOf: Day): boolean => asOf - lastDay <= inTrainingDays;

/**
 * Days between an athlete's last session and a planned one, for what a restart takes off. Sessions of
 * this week that are still to come are no days off: whoever is in training is taken to train until the
 * planned week, on the days on which sets may be proposed.
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
  if (inTraining(lastDay, asOf)) {
    for (let day = monday - 1; day > asOf; day--) if (mayLift(day)) return firstDay - day;
  }
  return firstDay - lastDay;
}
