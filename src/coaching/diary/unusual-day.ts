import type { Day } from "../calendar/day";
import type { SeasonHold } from "../hold/season-hold";
import type { DiaryDay } from "../record/diary-day";
import type { Race } from "../record/race";
import type { Run } from "../record/run";
import { itemsOf } from "./diary-item";
import { oddSize } from "./finding";
import { type PerformanceDay, performanceDays } from "./performance-day";
import { symptomWords } from "./symptom-words";

/** A diary item that was out of the athlete's ordinary on a day. */
export type StoodOut = {
  readonly item: string;
  readonly unit: "h" | "points" | "load" | "yes";
  readonly value: number;
  readonly usual: number;
  /** How many of the athlete's own spreads away. */
  readonly spreads: number;
};

/** Words written on a day, kept as written; empty when the row is private. */
export type Written = {
  readonly day: Day;
  readonly kind: "new" | "food" | "note";
  readonly text: string;
  readonly symptoms: readonly string[];
};

/** A day beyond the athlete's own wobble, with what stood out on it and the day before. */
export type UnusualDay = PerformanceDay & {
  readonly stoodOut: readonly StoodOut[];
  readonly written: readonly Written[];
  /** Rows of these two days whose words are private. */
  readonly privateRows: number;
  /** The latest race up to two weeks before, and how many days ago. */
  readonly race: { readonly race: string; readonly daysAgo: number } | null;
};

const raceDays = 14;

/**
 * The days of a season that lie beyond the athlete's own wobble in either direction, in order.
 *
 * @param races that this athlete runs
 */
export function unusualDays({
  hold,
  diary,
  runs,
  races,
}: {
  readonly hold: SeasonHold;
  readonly diary: readonly DiaryDay[];
  readonly runs: readonly Run[];
  readonly races: readonly Race[];
}): readonly UnusualDay[] {
  const items = itemsOf(diary, runs, hold.asOf);
  return performanceDays(hold)
    .filter(({ size }) => Math.abs(size) >= oddSize)
    .map((one) => {
      const near = diary.filter(({ day }) => day === one.day || day === one.day - 1);
      const race = races
        .filter(({ day }) => day <= one.day && day >= one.day - raceDays)
        .sort((a, b) => b.day - a.day)[0];
      return {
        ...one,
        stoodOut: items.flatMap(({ key, unit, values }) => {
          const value = values.get(one.day);
          const out = value === undefined ? null : beyondUsual(value, values, one.day);
          return out ? [{ item: key, unit, value: value!, ...out }] : [];
        }),
        written: near.filter((row) => !row.private).flatMap(writtenOn),
        privateRows: near.filter((row) => row.private && writtenOn(row).length > 0).length,
        race: race ? { race: race.race, daysAgo: one.day - race.day } : null,
      };
    });
}

/** A value more than one of the athlete's own spreads from the mean of the other days. */
function beyondUsual(
  value: number,
  values: ReadonlyMap<Day, number>,
  day: Day,
): { usual: number; spreads: number } | null {
  const others = [...values].flatMap(([other, one]) => (other === day ? [] : [one]));
  if (others.length < 4) return null;
  const usual = others.reduce((sum, one) => sum + one, 0) / others.length;
  const squares = others.reduce((sum, one) => sum + (one - usual) ** 2, 0);
  const sd = Math.sqrt(squares / (others.length - 1));
  if (value === usual) return null;
  const spreads = sd > 0 ? (value - usual) / sd : Math.sign(value - usual) * 9;
  return Math.abs(spreads) > 1 ? { usual, spreads } : null;
}

function writtenOn({ day, newToday, foodNote, note }: DiaryDay): readonly Written[] {
  const all = [
    { kind: "new", text: newToday },
    { kind: "food", text: foodNote },
    { kind: "note", text: note },
  ] as const;
  return all.flatMap(({ kind, text }) =>
    text.trim() === "" ? [] : [{ day, kind, text: text.trim(), symptoms: symptomWords(text) }],
  );
}
