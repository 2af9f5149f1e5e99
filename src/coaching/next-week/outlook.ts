import { type Block, isSame, rotation } from "../blocks/block";
import { ladder } from "../blocks/ladder";
import { nextBlock } from "../blocks/next-block";
import { mostReps } from "../blocks/repetition-load";
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
 * @param weeksHeld weeks already spent at this block and load, the proposed one not counted
 * @param holding true keeps block and load for all the weeks: slipping, modified, or coming back
 * @param weeks how many, the proposed one among them
 */
export function outlook(given: {
  readonly monday: Day;
  readonly block: Block;
  readonly loadKg: number;
  readonly guardKg: number | null;
  readonly stepKg: number;
  readonly largestStep: number;
  readonly weeksHeld: number;
  readonly holding: boolean;
  readonly races: readonly Race[];
  readonly rules: Pick<SquadRules, "holdWeeks" | "raceWeekSets">;
  readonly weeks: number;
}): readonly OutlookWeek[] {
  const { guardKg, rules, races } = given;
  let { block, loadKg, weeksHeld } = given;
  const ahead: OutlookWeek[] = [];
  for (let week = 0; week < given.weeks; week++) {
    const monday = given.monday + 7 * week;
    const kind = weekKind(monday, races);
    const ready = week > 0 && !given.holding && kind !== "race week";
    if (ready && weeksHeld >= rules.holdWeeks) {
      ({ block, loadKg } = stepAfter({ ...given, block, loadKg }));
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

/** The next step of the ladder, or the rotation's new start after its last. */
function stepAfter(given: {
  readonly block: Block;
  readonly loadKg: number;
  readonly guardKg: number | null;
  readonly stepKg: number;
  readonly largestStep: number;
}): { readonly block: Block; readonly loadKg: number } {
  const { block, loadKg, guardKg, stepKg } = given;
  if (!isSame(block, rotation[rotation.length - 1]!)) {
    const next = ladder(given).steps[1];
    return next ? { block: next.block, loadKg: next.loadKg } : { block, loadKg };
  }
  const all = { movedWell: true, volumeDone: true, heldSpeed: true };
  const reset = nextBlock({ block, loadKg, strengthKg: guardKg, stepKg, ...all });
  return reset.ok ? reset.value : { block, loadKg };
}
