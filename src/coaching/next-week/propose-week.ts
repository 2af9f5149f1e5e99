import type { WhoMay } from "../availability/who-may";
import { mostSessions } from "../season/usual-sessions-a-week";
import type { LineGiven, ProposedWeek } from "./proposed-line";
import { dayReasons } from "./reasons/day-reasons";
import { jumpsAloneReasons } from "./reasons/jumps-alone-reasons";
import { absenceReasons, unwellReasons } from "./reasons/line-reasons";
import { weekReasons } from "./reasons/week-reasons";
import type { LiftPlan } from "./session/lift-plan";
import type { AthleteState } from "./state/athlete-state";
import { isStrained } from "./state/is-strained";
import { liftingWeek } from "./week/lifting-week";
import { weekFrame } from "./week/week-frame";

/** One week's sets for one athlete from the rows as they stand, with every reason. */
export function proposeWeek(given: LineGiven): ProposedWeek {
  const { name, state, monday, change = {} } = given;
  const frame = weekFrame(given);
  const { kind, step, sessionsAWeek, days } = frame;
  const who = frame.mayOn(frame.firstDay);
  const exercise = step?.exercise ?? "";
  const base = { athlete: name, who, kind, exercise, sessionsAWeek, days, step };
  const absent = absenceReasons(state, monday);
  const { weekdays = [] } = step ?? frame.alone ?? {};
  const toldDays = dayReasons(days, frame.wanted, weekdays.slice(0, mostSessions));
  const nothing = (not: NonNullable<ProposedWeek["not"]>): ProposedWeek => ({
    ...base,
    not,
    sessions: [],
    reasons: [
      { code: not, facts: {} },
      ...(not === "out" ? [] : [...absent, ...unwellReasons(state)]),
      ...toldDays,
    ],
    odd: not !== "out",
  });
  if (who.not !== null) return nothing(who.not);
  if (days !== null && frame.alone !== null) {
    const reasons = jumpsAloneReasons(given, { ...frame, alone: frame.alone });
    return {
      ...nothing(days.best.length === 0 ? "no-day" : "no-sets-yet"),
      reasons: [...absent, ...reasons, ...toldDays],
      odd: absent.length > 0 || state.word === "slipping" || isEased(who, state),
    };
  }
  if (step === null || days === null) return nothing("no-sets-yet");
  if (days.best.length === 0 && change.day === undefined) return nothing("no-day");

  const week = liftingWeek(given, frame, step, days);
  const { plans, sessions } = week;
  const isDropped = plans.some(({ dropped }) => dropped.length > 0);
  return {
    ...base,
    not: null,
    sessions,
    reasons: [...absent, ...weekReasons(given, frame, week, who, toldDays)],
    odd: absent.length > 0 || isDropped || plans.some((plan) => isReadFirst(state, plan, who)),
  };
}

const isEased = (who: WhoMay, state: AthleteState) => who.mayDo !== "full" || isStrained(state);

/** Worth reading before writing. */
const isReadFirst = (
  state: AthleteState,
  { step, rest, isShort }: LiftPlan,
  who: WhoMay,
): boolean =>
  state.word === "slipping" ||
  isEased(who, state) ||
  rest !== null ||
  isShort ||
  step.movedWell === false ||
  step.changed?.isLeftOut === false ||
  // Where nobody's movement is written down, it is said once for all.
  (step.movedWell === null && state.movementKept);
