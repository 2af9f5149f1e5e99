import type { Day } from "../calendar/day";
import type { AvailabilitySpell } from "../record/availability-spell";
import { type Beside, saysUnwell } from "./says-unwell";

/** Days a word of pain or illness is asked after before sets are written (common practice, no source). */
const recentDays = 3;

/** What was written on a day, in the diary or beside a set, jump or run. */
export type Written = {
  readonly day: Day;
  /** First day the words may be of: another one for those of a week. */
  readonly from: Day;
  readonly text: string;
  readonly beside: Beside;
  /** Tab and cell, "Gym E3", and what that cell says; "" of a private row. */
  readonly at: () => { readonly place: string; readonly words: string };
};

/** A day on which pain or illness was written down, and where. */
export type UnwellDay = { readonly day: Day; readonly place: string };

/**
 * The latest of the last three days whose words speak of pain or illness; null when none does, or when
 * Availability has said since what is allowed. Words of soreness count where they name a foot, calf,
 * Achilles tendon or anything above the legs.
 *
 * @param written of one athlete, in any order
 * @param spells of the same athlete
 */
export function unwellDay(
  written: readonly Written[],
  spells: readonly Pick<AvailabilitySpell, "from">[],
  asOf: Day,
): UnwellDay | null {
  const answered = Math.max(...spells.map(({ from }) => (from > asOf ? -Infinity : from)));
  let latest: Written | null = null;
  for (const one of written) {
    const { day, text, beside } = one;
    const asked = day <= asOf && day > asOf - recentDays && day > answered;
    const later = latest === null || day > latest.day;
    if (asked && later && saysUnwell(text, beside)) latest = one;
  }
  return latest && { day: latest.day, place: latest.at().place };
}
