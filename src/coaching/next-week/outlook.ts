import type { Block } from "../blocks/block";
import { mostReps } from "../blocks/repetition-load";
import { stepAfter } from "../blocks/step-after";
import type { StepSize } from "../blocks/step-up";
import { weeksToHold } from "../blocks/weeks-to-hold";
import type { Day } from "../calendar/day";
import type { Race } from "../record/race";
import type { SquadRules } from "../record/squad-rules";
import { type WeekKind, weekKind } from "../season/race-hours";
import { raceWeekSets } from "../season/race-week-sets";

/** Where an athlete would stand in a week if every session went well. */
export type OutlookWeek = {
  readonly monday: Day;
  readonly kind: WeekKind;
  readonly block: Block;
  /** Sets after the cut of a race week. */
  readonly sets: number;
  readonly loadKg: number;
  /** Repetitions in reserve at the guard; null without one. */
  readonly reserve: number | null;
};

/**
 * The weeks ahead, the proposed one first, on the ladder planned backwards: a step once its weeks are
 * held, never in a race week, and after the last step the rotation again. What a coach would write if
 * quality, volume and speed held every time; no promise.
 *
 * A squad that steps by session is shown at the first session of each week.
 *
 * @param weeksHeld weeks already spent at this block and load, the proposed one not counted
 * @param firstTurn no other block than the first was done this season
 * @param holding true keeps block and load for all the weeks: slipping, modified, or coming back
 * @param weeks how many, the proposed one among them
 */
export function outlook(
  given: StepSize & {
    readonly monday: Day;
    readonly block: Block;
    readonly loadKg: number;
    readonly guardKg: number | null;
    readonly weeksHeld: number;
    readonly firstTurn: boolean;
    readonly sessionsAWeek: number;
    readonly holding: boolean;
    readonly races: readonly Race[];
    readonly rules: Pick<
      SquadRules,
      "firstHold" | "holdWeeks" | "raceWeekSets" | "resetShare" | "stepBySession"
    >;
    readonly weeks: number;
  },
): readonly OutlookWeek[] {
  const { guardKg, rules, races } = given;
  let { block, loadKg, weeksHeld, firstTurn } = given;
  const steps = rules.stepBySession >= 0.5 ? given.sessionsAWeek : 1;
  const ahead: OutlookWeek[] = [];
  for (let week = 0; week < given.weeks; week++) {
    const monday = given.monday + 7 * week;
    const kind = weekKind(monday, races);
    const ready = week > 0 && !given.holding && kind !== "race week";
    if (ready && weeksHeld >= weeksToHold(block, firstTurn, rules)) {
      for (let step = 0; step < steps; step++) {
        ({ block, loadKg } = stepAfter({ ...given, resetShare: rules.resetShare, block, loadKg }));
      }
      firstTurn = false;
      weeksHeld = 0;
    }
    weeksHeld++;
    ahead.push({
      monday,
      kind,
      block,
      sets: kind === "race week" ? raceWeekSets(block.sets, rules.raceWeekSets) : block.sets,
      loadKg,
      reserve: guardKg === null ? null : mostReps(loadKg / guardKg) - block.reps,
    });
  }
  return ahead;
}
