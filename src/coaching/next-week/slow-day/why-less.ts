import type { MayDoOn } from "../../availability/spell-on";
import { type Day, mondayOf } from "../../calendar/day";
import { saysUnwell } from "../../diary/says-unwell";
import type { LiftingSet } from "../../record/lifting-set";
import type { Race } from "../../record/race";
import type { SquadRules } from "../../record/squad-rules";
import { daysSinceMarathon, isCutForRace } from "../../season/race-hours";
import type { AskedLess } from "../present-step/reason-under-plan";
import type { StateOnLift } from "../state/athlete-state";
import { saysLighter } from "./says-lighter";
import { slowDay } from "./slow-day";

/** A word of pain is asked about for so long before what was lifted with it counts as a day's (common practice, no source). */
const painDays = 7;

/**
 * Why a day asked for less than its plan: eased after a marathon, slow, eased for an A race, or as a note
 * beside a set says. A load that
 * was lighter for pain or under a limit is no day's load: nobody is sent back to the one before it.
 *
 * @param session sets of one athlete's lift on the day, in order
 */
export function whyLess(
  session: readonly LiftingSet[],
  given: {
    readonly day: Day;
    readonly asOf: Day;
    readonly races: readonly Race[];
    readonly rules: SquadRules;
    readonly state: Pick<StateOnLift, "usualLead" | "unwellDay">;
    readonly mayDo: MayDoOn;
  },
): AskedLess {
  const { day, asOf, races, rules, state, mayDo } = given;
  const unwell = state.unwellDay !== null && day > asOf - painDays;
  if (mayDo !== "full" || unwell || session.some(({ note }) => saysUnwell(note, "set"))) {
    return "may not";
  }
  // A week is eased by its first session: the second may lie past the marathon's last day.
  const afterMarathon = [day, mondayOf(day)].some(
    (one) => daysSinceMarathon(one, races, rules) !== null,
  );
  if (afterMarathon) return "eased";
  if (slowDay(session, state.usualLead)) return "slow";
  if (isCutForRace(day, races)) return "eased";
  return session.some(({ note }) => saysLighter(note)) ? "noted" : null;
}
