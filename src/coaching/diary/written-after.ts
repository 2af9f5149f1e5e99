import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import type { LiftingSet } from "../record/lifting-set";

/** Minute of the first set of each gym day, where a set says when it was. */
export function sessionStarts(
  sets: readonly Pick<LiftingSet, "day" | "minute">[],
): ReadonlyMap<Day, number> {
  const starts = new Map<Day, number>();
  for (const { day, minute } of sets) {
    if (minute === null) continue;
    starts.set(day, Math.min(minute, starts.get(day) ?? minute));
  }
  return starts;
}

/**
 * Whether a diary row was written after that day's session began: then it may describe the session
 * and cannot explain it. Without both times it counts as written before, as diaries are filled in
 * of a morning (common practice, no source).
 */
export function writtenAfter(row: DiaryDay, starts: ReadonlyMap<Day, number>): boolean {
  return (row.minute ?? 0) > (starts.get(row.day) ?? Number.POSITIVE_INFINITY);
}
