import type { Day } from "../calendar/day";
import { itemByDay } from "../readiness/diary-items";
import type { ReadinessItem } from "../readiness/readiness";
import type { DiaryDay } from "../record/diary-day";
import type { Run } from "../record/run";

/** What may differ between days: a number, or something that was there or not. */
export type ItemKind = "amount" | "yes or no";

/** One diary item of one athlete, by day. Body mass and food are no items. */
export type DiaryItem = {
  readonly key: string;
  readonly kind: ItemKind;
  readonly values: ReadonlyMap<Day, number>;
  /** Step a coach thinks in: an hour of sleep, a point, 100 of run load. */
  readonly step: number;
  readonly unit: "h" | "points" | "load" | "yes";
};

const amounts: readonly ReadinessItem[] = [
  "sleep",
  "sleep quality",
  "soreness",
  "fatigue",
  "stress",
  "mood",
];

/**
 * The items of one athlete that the diary and the runs give, each by the day it speaks for. The food
 * note is left out on purpose: food and body mass are shown or kept as written, never compared.
 *
 * @param diary of one athlete, in order; days written after the session are left out by the caller
 * @param runs of one athlete; yesterday's load speaks for today
 */
export function itemsOf(
  diary: readonly DiaryDay[],
  runs: readonly Run[],
  asOf: Day,
): readonly DiaryItem[] {
  const items: DiaryItem[] = amounts.map((key) => ({
    key,
    kind: "amount",
    values: new Map(itemByDay(diary, key).map(({ day, value }) => [day, value])),
    step: 1,
    unit: key === "sleep" ? "h" : "points",
  }));
  items.push({
    key: "run the day before",
    kind: "amount",
    values: loadOfDayBefore(runs, asOf),
    step: 100,
    unit: "load",
  });
  items.push(yesOrNo("carbs in session", diary, ({ carbsInSession }) => carbsInSession));
  const anything = ({ newToday }: DiaryDay) => newToday.trim() !== "";
  if (diary.some(anything)) items.push(yesOrNo("something new", diary, anything));
  return items.filter(({ values }) => values.size > 0);
}

function yesOrNo(
  key: string,
  diary: readonly DiaryDay[],
  said: (row: DiaryDay) => boolean | null,
): DiaryItem {
  const values = new Map<Day, number>();
  for (const row of diary) {
    const answer = said(row);
    if (answer !== null) values.set(row.day, answer || values.get(row.day) === 1 ? 1 : 0);
  }
  return { key, kind: "yes or no", values, step: 1, unit: "yes" };
}

/**
 * Exertion × minutes of the day before, from the first day runs were written down to the last, days
 * without a run as zero; a day with a run that lacks minutes or exertion is not known.
 */
function loadOfDayBefore(runs: readonly Run[], asOf: Day): ReadonlyMap<Day, number> {
  const done = runs.filter(({ day }) => day <= asOf);
  const values = new Map<Day, number>();
  if (done.length === 0) return values;
  const first = Math.min(...done.map(({ day }) => day));
  const last = Math.max(...done.map(({ day }) => day));
  const loads = new Map<Day, number | null>();
  for (const { day, minutes, exertion } of done) {
    const before = loads.get(day);
    const load = minutes === null || exertion === null ? null : minutes * exertion;
    loads.set(day, before === null || load === null ? null : (before ?? 0) + load);
  }
  for (let day = first; day <= last; day++) {
    const load = loads.get(day);
    if (load !== null) values.set(day + 1, load ?? 0);
  }
  return values;
}
