import type { Day } from "../calendar/day";
import type { AvailabilitySpell } from "../record/availability-spell";
import type { Absence } from "./absences";
import { saysAwayNow } from "./says-absent";

/** Days a spell that has begun answers such words for (common practice, no source). */
const answeredDays = 14;

/** Words of an athlete that stand beside no day. */
export type StandingWords = {
  readonly text: string;
  /** Last day the words name; null when they name none. */
  readonly until: Day | null;
  /** Tab and cell, "Athletes D3", and what that cell says. */
  readonly at: () => { readonly place: string; readonly words: string };
};

/**
 * Absences written beside no day, as in the list of athletes. They hold until the day they name, and while
 * Availability says nothing of now: no spell that begins, has lately begun, ends later or still limits.
 *
 * @param standing of one athlete, in the order in which they stand
 * @param spells of the same athlete
 */
export function standingAbsences(
  standing: readonly StandingWords[],
  spells: readonly Pick<AvailabilitySpell, "from" | "until" | "mayDo">[],
  asOf: Day,
): readonly Absence[] {
  const speaksOfNow = ({ from, until, mayDo }: (typeof spells)[number]) =>
    from > asOf - answeredDays ||
    (until === null ? mayDo === "out" || mayDo === "modified" : until >= asOf);
  if (spells.some(speaksOfNow)) return [];
  return standing.flatMap(({ text, until, at }) =>
    (until === null || until >= asOf) && saysAwayNow(text)
      ? [{ day: null, from: null, ...at() }]
      : [],
  );
}
