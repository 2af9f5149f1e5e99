import type { WhoMay } from "../../availability/who-may";
import { raceNear } from "../../season/race-hours";
import type { LineReason } from "../line-reason";
import type { LineGiven, ProposedSession } from "../proposed-line";
import { handSet } from "../session/hand-set";
import type { LiftingWeek } from "../week/lifting-week";
import type { WeekFrame } from "../week/week-frame";
import { orByHand } from "./by-hand";
import {
  contactReasons,
  cutReasons,
  dropReasons,
  fewerSetsReasons,
  manySessionsReasons,
  newLiftReasons,
  otherSpeedsReasons,
  otherwiseReasons,
  stackReasons,
  stateReasons,
  swapReasons,
} from "./line-reasons";
import { turnReasons } from "./turn-reasons";

/**
 * Why the week is as it is, in the order in which a coach reads: what was swapped, the loads, what was
 * left out, sets and contacts, days, and the athlete's state.
 *
 * @param toldDays why its days are those
 */
export function weekReasons(
  { state, change = {} }: LineGiven,
  frame: WeekFrame,
  week: LiftingWeek,
  who: WhoMay,
  toldDays: readonly LineReason[],
): readonly LineReason[] {
  const { own, sessions } = week;
  const isOwn = ({ day, onLadder }: ProposedSession) => week.planOn(day) === own && onLadder;
  const first = sessions.find(isOwn);
  return [
    ...swapReasons(sessions, who),
    ...(first || isTakenDownUnseen(week) ? ownLoadReasons(week, change, first) : []),
    ...sessions.flatMap((session) =>
      isOwn(session)
        ? []
        : turnReasons(session, week.planOn(session.day), handSet(change, session.turn)),
    ),
    ...own.dropped,
    ...own.readAs,
    ...(change.block === undefined && change.sets === undefined && first
      ? fewerSetsReasons(own)
      : []),
    ...newLiftReasons(own.step),
    ...raceCutReasons(frame, week, change),
    ...((week.eased || week.racing) && change.contacts === undefined
      ? contactReasons(sessions)
      : []),
    ...otherwiseReasons(sessions),
    ...otherSpeedsReasons(own.state, sessions),
    ...toldDays,
    ...manySessionsReasons(frame.sessionsAWeek),
    ...stackReasons(sessions),
    ...dropReasons(sessions),
    ...stateReasons(state, who),
  ];
}

/** The lift is done in turn alone this week, and a break has taken its ladder down. */
const isTakenDownUnseen = ({ own, plans }: LiftingWeek) =>
  plans[0] === own && own.easedNow && own.planned.loadKg !== own.step.loadKg;

function ownLoadReasons(
  { own, turnOf }: LiftingWeek,
  change: NonNullable<LineGiven["change"]>,
  first: ProposedSession | undefined,
): readonly LineReason[] {
  const loadKg = handSet(change, turnOf(own, true)).loadKg ?? own.planned.loadKg;
  const { reasons } = own.planned;
  return [...(first ? orByHand(first, reasons) : reasons), ...own.bar(loadKg).reasons];
}

/** Of the first session with fewer sets for a race: in a race week the week says which. */
function raceCutReasons(
  { races, kind, cutOn }: WeekFrame,
  { sessions, planOn }: LiftingWeek,
  change: NonNullable<LineGiven["change"]>,
): readonly LineReason[] {
  const cut = sessions.find(({ day }) => cutOn(day));
  // Sets set by hand are not what a race has left of them.
  if (cut === undefined || change.sets !== undefined) return [];
  const sets = planOn(cut.day).setsOf(cut.block, handSet(change, cut.turn));
  return cutReasons(sets, cut, kind === "race week" ? null : raceNear(cut.day, races));
}
