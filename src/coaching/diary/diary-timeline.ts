import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import { itemsOf } from "./diary-item";
import { performanceDays } from "./performance-day";
import { symptomDays } from "./symptom-day";
import { type StoodOut, stoodOutOn, type UnusualDay } from "./unusual-day";
import type { DiaryOfAthlete } from "./what-differed";

/** What the diary holds for a day: words of pain or illness, a figure out of the usual, a note. */
export type MarkKind = "pain or illness" | "figure" | "note";

/** A season's sessions in own wobbles, with the marks of the diary beneath them. */
export type DiaryTimeline = {
  readonly sessions: readonly {
    readonly day: Day;
    /** In units of the athlete's own wobble; above zero is good. */
    readonly size: number;
    readonly side: -1 | 0 | 1;
  }[];
  readonly marks: readonly { readonly day: Day; readonly kind: MarkKind }[];
};

/**
 * Lays the diary under the sessions it was kept beside. Notes of private rows make no mark, food and
 * carbohydrate none either: they are read as written and never drawn.
 *
 * @param unusual the unusual days of the same season
 */
export function diaryTimeline(
  { hold, diary, runs }: DiaryOfAthlete,
  unusual: readonly UnusualDay[],
): DiaryTimeline {
  const odd = new Map(unusual.map(({ day, size }) => [day, size]));
  const sessions = performanceDays(hold).map(({ day, size }) => {
    const told = odd.get(day);
    return { day, size: told ?? size, side: told === undefined ? 0 : told < 0 ? -1 : 1 } as const;
  });
  const [first] = sessions;
  if (!first) return { sessions, marks: [] };
  const amounts = itemsOf(diary, runs, hold.asOf).filter(({ kind }) => kind === "amount");
  const marked = (kind: MarkKind, days: readonly Day[]) =>
    [...new Set(days)]
      // What was written since the last session is the newest there is.
      .filter((day) => day >= first.day - 1 && day <= hold.asOf)
      .sort((a, b) => a - b)
      .map((day) => ({ day, kind }));
  const kept = [...new Set(diary.map(({ day }) => day))];
  return {
    sessions,
    marks: [
      ...marked(
        "pain or illness",
        symptomDays(diary, hold.asOf).map(({ day }) => day),
      ),
      ...marked(
        "figure",
        kept.filter((day) => stoodOutOn(amounts, day).some(farOut)),
      ),
      ...marked(
        "note",
        diary.filter(hasNote).map(({ day }) => day),
      ),
    ],
  };
}

/** Of seven items one is a spread away on most days; twice as far is worth a mark. */
function farOut({ spreads }: StoodOut): boolean {
  return Math.abs(spreads) >= 2;
}

function hasNote({ private: hidden, note, newToday }: DiaryDay): boolean {
  return !hidden && (note.trim() !== "" || newToday.trim() !== "");
}
