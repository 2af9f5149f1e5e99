import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import type { Dated } from "./past-values";
import type { ReadinessItem } from "./readiness";

const valueOfItem: Record<ReadinessItem, (row: DiaryDay) => number | null> = {
  sleep: ({ sleepH }) => sleepH,
  "sleep quality": ({ sleepQuality }) => sleepQuality,
  soreness: ({ soreness }) => soreness,
  fatigue: ({ fatigue }) => fatigue,
  stress: ({ stress }) => stress,
  mood: ({ mood }) => mood,
};

export const diaryItems = Object.keys(valueOfItem) as readonly ReadinessItem[];

/** One item's values by day; of two rows on a day the later one counts. */
export function itemByDay(diary: readonly DiaryDay[], item: ReadinessItem): readonly Dated[] {
  const values = new Map<Day, number>();
  for (const row of diary) {
    const value = valueOfItem[item](row);
    if (value !== null) values.set(row.day, value);
  }
  return [...values].map(([day, value]) => ({ day, value }));
}
