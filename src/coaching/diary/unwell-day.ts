import type { Day } from "../calendar/day";
import type { AvailabilitySpell } from "../record/availability-spell";
import { type Beside, saysUnwell } from "./says-unwell";

/** Days a word of pain or illness is asked after before sets are written (common practice, no source). */
const recentDays = 3;

/** What was written on a day, in the diary or beside a set, jump or run. */
export type Written = {
  readonly day: Day;
  readonly text: string;
  readonly beside: Beside;
};

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
): Day | null {
  const answered = Math.max(...spells.map(({ from }) => (from > asOf ? -Infinity : from)));
  const days = written.flatMap(({ day, text, beside }) => {
    const asked = day <= asOf && day > asOf - recentDays && day > answered;
    return asked && saysUnwell(text, beside) ? [day] : [];
  });
  return days.length === 0 ? null : Math.max(...days);
}
