import { meanOf } from "../../statistics/spread";
import { type Day, weekdayOfDay } from "../calendar/day";
import type { SeasonHold } from "../hold/season-hold";
import type { DiaryDay } from "../record/diary-day";
import type { Race } from "../record/race";
import type { Run } from "../record/run";
import { type DiaryItem, itemsOf } from "./diary-item";
import { oddAloneSize, oddSize } from "./finding";
import { hurtParts } from "./hurt-parts";
import { type PerformanceDay, performanceDays, type ValueOfDay } from "./performance-day";
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
export type UnusualDay = {
  readonly day: Day;
  /** The value that says most, its percent of the level around it. */
  readonly value: Pick<ValueOfDay, "kind" | "of">;
  readonly valuePercent: number;
  /** In units of the athlete's own wobble: of the values together, or of that value alone. */
  readonly size: number;
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
    .flatMap((day) => {
      const odd = oddnessOf(day);
      return odd ? [{ day: day.day, ...odd }] : [];
    })
    .map((one) => {
      const near = diary.filter(({ day }) => day === one.day || day === one.day - 1);
      const race = races
        .filter(({ day }) => day <= one.day && day >= one.day - raceDays)
        .sort((a, b) => b.day - a.day)[0];
      return {
        ...one,
        stoodOut: stoodOutOn(items, one.day),
        written: near.filter((row) => !row.private).flatMap(writtenOn),
        privateRows: near.filter((row) => row.private && writtenOn(row).length > 0).length,
        race: race ? { race: race.race, daysAgo: one.day - race.day } : null,
      };
    });
}

/** The items that were out of the athlete's ordinary on a day. */
export function stoodOutOn(items: readonly DiaryItem[], day: Day): readonly StoodOut[] {
  return items.flatMap(({ key, unit, values }) => {
    const value = values.get(day);
    const out = value === undefined ? null : beyondUsual(value, values, day);
    return out ? [{ item: key, unit, value: value!, ...out }] : [];
  });
}

/**
 * What makes a day unusual: its values together, or one of several alone a little further out. Null
 * for an ordinary day.
 */
function oddnessOf({ size, values }: PerformanceDay) {
  const most = values.reduce((a, b) => (Math.abs(b.size) > Math.abs(a.size) ? b : a));
  const named = (of: ValueOfDay, how: number) => ({
    value: { kind: of.kind, of: of.of },
    valuePercent: of.percent,
    size: how,
  });
  // A value by itself is the day's size, which is asked next.
  const alone = Math.abs(most.size) >= oddAloneSize;
  if (alone && Math.abs(most.size) >= Math.abs(size)) return named(most, most.size);
  if (Math.abs(size) < oddSize) return null;
  return named(
    values.reduce((a, b) => (b.size * size > a.size * size ? b : a)),
    size,
  );
}

/**
 * A value more than one of the athlete's own spreads from the mean of the other days, of the same
 * weekday where there are four: a rest day before every Tuesday does not stand out.
 */
function beyondUsual(
  value: number,
  values: ReadonlyMap<Day, number>,
  day: Day,
): { usual: number; spreads: number } | null {
  const otherDays = [...values].filter(([other]) => other !== day);
  const alike = otherDays.filter(([other]) => weekdayOfDay(other) === weekdayOfDay(day));
  const others = (alike.length >= 4 ? alike : otherDays).map(([, one]) => one);
  if (others.length < 4) return null;
  const usual = meanOf(others);
  const squares = others.reduce((sum, one) => sum + (one - usual) ** 2, 0);
  const sd = Math.sqrt(squares / (others.length - 1));
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
    text.trim() === ""
      ? []
      : [{ day, kind, text: text.trim(), symptoms: [...symptomWords(text), ...hurtParts(text)] }],
  );
}
