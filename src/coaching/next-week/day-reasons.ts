import { weekdayOfDay } from "../calendar/day";
import { type GymDays, leastApart } from "../season/gym-days";
import type { LineReason } from "./line-reason";

/**
 * The days a coach may have expected and the rule each breaks: the athlete's usual gym days, else the
 * first day that would have stood well apart from the one proposed.
 *
 * @param wanted sessions wanted in the week
 * @param weekdays the athlete's usual gym weekdays, most used first; as many as there are sessions
 */
export function dayReasons(
  days: GymDays | null,
  wanted: number,
  weekdays: readonly number[],
): LineReason[] {
  if (!days || days.best.length >= wanted) return [];
  const refused = days.all.flatMap(({ day, refused: rule }) =>
    rule?.code === "before-race" && days.best.every((one) => Math.abs(one.day - day) >= leastApart)
      ? [{ day, rule }]
      : [],
  );
  const usual = refused.filter(({ day }) => weekdays.includes(weekdayOfDay(day)));
  return (usual.length > 0 ? usual : refused.slice(0, 1)).map(({ day, rule }) => ({
    code: "day-before-race",
    facts: {
      day,
      hours: Math.floor(rule.hours),
      race: rule.race.race,
      matters: rule.race.matters ?? "C",
      limit: rule.limit,
    },
  }));
}
