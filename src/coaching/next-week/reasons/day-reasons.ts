import { weekdayOfDay } from "../../calendar/day";
import { type GymDays, leastApart } from "../../season/gym-days";
import type { LineReason } from "../line-reason";

/**
 * The days a coach may have expected and the race rule each breaks: the athlete's usual gym days; else,
 * where a session is wanting, the first day before a race that would have stood well apart from the
 * one proposed.
 *
 * @param wanted sessions wanted in the week
 * @param weekdays the athlete's usual gym weekdays, most used first; as many as there are sessions
 */
export function dayReasons(
  days: GymDays | null,
  wanted: number,
  weekdays: readonly number[],
): LineReason[] {
  if (!days) return [];
  const moved = days.best.length >= wanted;
  const refused = days.all.flatMap(({ day, refused: rule }) =>
    rule &&
    "race" in rule &&
    (moved || days.best.every((one) => Math.abs(one.day - day) >= leastApart))
      ? [{ day, rule }]
      : [],
  );
  const usual = refused.filter(({ day }) => weekdays.includes(weekdayOfDay(day)));
  const first = refused.filter(({ rule }) => rule.code === "before-race").slice(0, 1);
  return (usual.length > 0 || moved ? usual : first).map(({ day, rule }) => ({
    code: `day-${rule.code}`,
    facts: {
      day,
      hours: Math.floor(rule.hours),
      race: rule.race.race,
      matters: rule.race.matters ?? "C",
      limit: rule.limit,
    },
  }));
}
