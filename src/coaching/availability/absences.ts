import type { Day } from "../calendar/day";
import { saysUnwell } from "../diary/says-unwell";
import type { Written } from "../diary/unwell-day";
import type { AvailabilitySpell } from "../record/availability-spell";
import { saysAbsent, saysAway } from "./says-absent";

/** Days an absence to come is told for, whatever is done in between (common practice, no source). */
const aheadDays = 14;

/** Words of an absence that the rows have not ended yet. */
export type Absence = {
  /** Null of words that stand beside no day. */
  readonly day: Day | null;
  /** First day of a week whose words they are; the day itself otherwise. */
  readonly from: Day | null;
  /** As the cell says it; "" of a private row. */
  readonly words: string;
  /** Tab and cell, "Gym E3". */
  readonly place: string;
};

/**
 * What was written of an athlete's absence and still holds: nothing was done since, or it named a time to
 * come, and Availability has not said since what is allowed. In place of something done it need only say so; beside something done,
 * or in the diary, it names a beginning or an end. Of the same words the latest; days to come are among them.
 *
 * @param written of one athlete, in any order
 * @param doneOn days up to `asOf` on which the athlete did what such words stand beside
 */
export function absences(
  written: readonly Written[],
  doneOn: (beside: Written["beside"]) => readonly Day[],
  spells: readonly Pick<AvailabilitySpell, "from" | "until" | "mayDo">[],
  asOf: Day,
): readonly Absence[] {
  const latest = new Map<string, Absence & { readonly day: Day }>();
  for (const { day, from, text, beside, at } of written) {
    const isOut = (spell: (typeof spells)[number]) =>
      spell.mayDo === "out" && (spell.until ?? day) >= day;
    if (spells.some((spell) => spell.from >= from || isOut(spell))) continue;
    const done = doneOn(beside);
    const since = done.some((one) => one > day && one <= asOf);
    // What was done since was before they left.
    if (since && !(saysAway(text) && asOf - day <= aheadDays)) continue;
    const besideDone = beside === "diary" || done.some((one) => one >= from && one <= day);
    const says = besideDone ? saysAway(text) : saysAbsent(text) || saysUnwell(text, beside);
    if (!says) continue;
    const said = at();
    const key = said.words || said.place;
    if ((latest.get(key)?.day ?? -Infinity) < day) latest.set(key, { day, from, ...said });
  }
  return [...latest.values()].sort((a, b) => a.day - b.day);
}
