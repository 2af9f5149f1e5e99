import { type Day, mondayOf, weekdayOfDay } from "../../calendar/day";
import { exerciseKey } from "../../record/exercise-key";
import { lateWeekdays } from "../present-step/in-turn";
import type { PresentStep } from "../present-step/present-step";

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

/** Whose turn a session is: a lift's, and in it its ladder's or what is done in turn with that. */
export type LiftTurn = { readonly step: PresentStep; readonly onLadder: boolean };

/**
 * Whose turn each of a week's sessions is, by day.
 *
 * @param setDay the day the coach has set: the ladder's of the lift the athlete is on, where the week has it
 */
export function turnsByDay(
  days: readonly { readonly day: Day }[],
  step: PresentStep,
  setDay?: Day,
): ReadonlyMap<Day, LiftTurn> {
  const turns = [step, ...step.others].flatMap((one) => [
    { step: one, onLadder: true, done: one.sessions },
    ...(one.inTurn.length > 0 ? [{ step: one, onLadder: false, done: one.inTurn }] : []),
  ]);
  const ordered = days.map(({ day }) => day).sort((a, b) => a - b);
  const done = turns.map(({ done: sessions }) => ({
    lastDay: sessions[sessions.length - 1]!.day,
    weekdays: lateWeekdays(sessions),
  }));
  const usual = turnsOfWeek(ordered, done);
  if (setDay === undefined || !usual.includes(0)) return byDay(ordered, usual, turns);
  const others = ordered.filter((day) => day !== setDay);
  const [own, ...rest] = done;
  const places = turnsOfWeek(others, [{ ...own!, lastDay: setDay }, ...rest]);
  return byDay([setDay, ...others], [0, ...places], turns);
}

const byDay = (days: readonly Day[], places: readonly number[], turns: readonly LiftTurn[]) =>
  new Map(days.map((day, at) => [day, turns[places[at]!]!]));

/** Name of a turn that is not the week's first: its lift's key, or that and "in turn" for what is done in turn with the lift's ladder. */
export const turnName = ({ step, onLadder }: LiftTurn): string =>
  `${exerciseKey(step.exercise)}${onLadder ? "" : " in turn"}`;

/** The turn whose figures stand for a week: that of the lift the athlete is on, its ladder's before what is done in turn with it; in a week without it another lift's. */
export function firstTurn(turns: readonly LiftTurn[], step: PresentStep): LiftTurn {
  const isOther = (turn: LiftTurn) => Number(turn.step !== step);
  const isOff = ({ onLadder }: LiftTurn) => Number(!onLadder);
  const [first] = [...turns].sort((a, b) => isOther(a) - isOther(b) || isOff(a) - isOff(b));
  return first!;
}
