import { type Day, mondayOf, weekdayOfDay } from "../calendar/day";
import { type InTurn, lateWeekdays } from "./in-turn";
import type { PresentStep } from "./present-step";

/** Something done in turn with others: when it was done last, and on which weekdays. */
export type Turn = { readonly lastDay: Day; readonly weekdays: readonly number[] };

/**
 * Which of several things done in turn each of a week's sessions is: what alone has that weekday, once
 * a week, else what was done longest ago.
 *
 * @param days of the week's sessions, in order
 * @returns places among the turns, one for each day
 */
export function turnsOfWeek(days: readonly Day[], turns: readonly Turn[]): readonly number[] {
  const lastOf = turns.map(({ lastDay }) => lastDay);
  return days.map((day) => {
    const usual = turns.flatMap(({ weekdays }, at) =>
      weekdays.includes(weekdayOfDay(day)) ? [at] : [],
    );
    const [only] = usual;
    const isFree = usual.length === 1 && lastOf[only!]! < mondayOf(day);
    const at = isFree ? only! : lastOf.indexOf(Math.min(...lastOf));
    lastOf[at] = day;
    return at;
  });
}

/** What takes the place of the step on some of a week's days, by day. */
export function inTurnOn(
  days: readonly Day[],
  { lastDay, sessions, inTurn }: Pick<PresentStep, "lastDay" | "sessions" | "inTurn">,
): ReadonlyMap<Day, InTurn> {
  const ordered = [...days].sort((a, b) => a - b);
  const turns = turnsOfWeek(ordered, [{ lastDay, weekdays: lateWeekdays(sessions) }, ...inTurn]);
  return new Map(
    ordered.flatMap((day, at) => {
      const other = inTurn[turns[at]! - 1];
      return other ? [[day, other] as const] : [];
    }),
  );
}
