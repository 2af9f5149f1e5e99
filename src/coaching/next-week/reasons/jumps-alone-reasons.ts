import { restartAfter } from "../../blocks/restart";
import { daysSinceMarathon } from "../../season/race-hours";
import { dropHeight } from "../jumps/drop-height";
import { jumpPlan } from "../jumps/jump-plan";
import type { JumpsAlone } from "../jumps/jumps-alone";
import type { LineReason } from "../line-reason";
import { gapBefore } from "../next-step/gap-before";
import type { LineGiven } from "../proposed-line";
import { isStrained } from "../state/is-strained";
import type { WeekFrame } from "../week/week-frame";
import { dropHeightReasons, stateReasons, unwellReasons } from "./line-reasons";

/**
 * What a coach whose athlete jumps and lifts nothing needs for the week: that no lift is proposed, how
 * many ground contacts a session holds and the last stack cleared, and whatever takes jumps away.
 */
export function jumpsAloneReasons(
  { athlete, name, state, rows, monday, asOf }: LineGiven,
  {
    alone,
    days,
    firstDay,
    mayOn,
    mayLift,
    races,
    cutOn,
    landsAgain,
  }: WeekFrame & { readonly alone: JumpsAlone },
): LineReason[] {
  const who = mayOn(firstDay);
  // There is no load that an unusually good day might tempt to add.
  const asked = stateReasons(state, who).filter(({ code }) => code !== "above-usual");
  if (days?.best.length === 0) return [{ code: "no-day", facts: {} }, ...asked];
  const gap = gapBefore({ lastDay: alone.lastDay, firstDay, monday, asOf, mayLift });
  const eased =
    isStrained(state) ||
    landsAgain ||
    cutOn(firstDay) ||
    daysSinceMarathon(firstDay, races, rows.rules) !== null ||
    restartAfter(gap, alone.sessionsAWeek) !== null;
  const experience = athlete?.experience ?? null;
  const { contacts, stackKg, stackReason } = jumpPlan({
    experience,
    noJumps: who.noJumps,
    eased,
    state,
    plates: rows.plates,
  });
  return [
    // Pain or illness is asked about before a jump is counted.
    ...unwellReasons(state),
    { code: "only-jumps", facts: { contacts, stack: stackKg.join("+") } },
    ...(contacts === 0
      ? []
      : [
          ...(eased ? [{ code: "contacts-halved", facts: {} }] : []),
          ...(stackReason === null ? [] : [stackReason]),
          ...dropHeightReasons(dropHeight(rows.jumps, name, asOf, experience, rows.plates)),
        ]),
    ...asked.filter(({ code }) => code !== "unwell"),
  ];
}
