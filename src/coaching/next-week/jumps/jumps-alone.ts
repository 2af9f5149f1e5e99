import type { Day } from "../../calendar/day";
import { nameKey } from "../../record/name-key";
import type { SquadRows } from "../../record/squad-rows";
import { usualSessionsAWeek } from "../../season/usual-sessions-a-week";
import { usualMinute, usualWeekdays } from "../present-step/usual-times";
import type { LineGiven } from "../proposed-line";

/** How an athlete comes of whom jumps stand in the rows and no sets. */
export type JumpsAlone = {
  readonly weekdays: readonly number[];
  readonly minute: number;
  readonly sessionsAWeek: number;
  readonly lastDay: Day;
};

/** The days on which an athlete has jumped up to a day; null without any. */
export function jumpsAlone({
  athlete,
  name,
  rows,
  asOf,
}: Pick<LineGiven, "athlete" | "name" | "asOf"> & {
  readonly rows: Pick<SquadRows, "jumps">;
}): JumpsAlone | null {
  const key = nameKey(name);
  const own = rows.jumps.filter((jump) => jump.day <= asOf && nameKey(jump.athlete) === key);
  const days = [...new Set(own.map(({ day }) => day))].sort((a, b) => a - b);
  const lastDay = days[days.length - 1];
  return lastDay === undefined
    ? null
    : {
        weekdays: usualWeekdays(days),
        minute: usualMinute,
        sessionsAWeek: usualSessionsAWeek(athlete, days),
        lastDay,
      };
}
