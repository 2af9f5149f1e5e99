import { meanOf } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import type { Dated } from "./past-values";
import type { ReadinessItem } from "./readiness";
import { moreIsWorse, type ReadinessSettings, usualSpread } from "./readiness-settings";

/** Recent values of one athlete's readings, by day. */
export type AthleteReadings = {
  readonly speed: readonly Dated[];
  readonly jump: readonly Dated[];
  readonly items: ReadonlyMap<ReadinessItem, readonly Dated[]>;
};

export type Ties = Pick<ReadinessSettings, "betweenItems" | "speedWithJump" | "withDiary">;

/** Two readings that say nearly the same must not count as one alone. */
const closest = 0.9;
type Deviations = ReadonlyMap<Day, number>;
type Pair = readonly [Deviations, Deviations];

/**
 * How far the parts of an ordinary day go together in this squad: correlations within athletes of
 * values taken on the same day, pooled over all athletes and drawn toward the assumed ones, which
 * count as so many days. A correlation taken too high makes the sum of the parts seem steadier than
 * it is awaited to be, and ordinary and bad days alike are then called too seldom. Below none they
 * count as none.
 */
export function squadTies(squad: readonly AthleteReadings[], settings: ReadinessSettings): Ties {
  const between: Pair[] = [];
  const jumping: Pair[] = [];
  const feeling: Pair[] = [];
  for (const { speed, jump, items } of squad) {
    const speeds = deviations(speed, usualSpread.speed.sd, settings);
    const jumps = deviations(jump, usualSpread.jump.sd, settings);
    const felt = [...items].map(([item, values]) =>
      deviations(values, (moreIsWorse.has(item) ? -1 : 1) * usualSpread[item].sd, settings),
    );
    felt.forEach((one, i) => {
      for (const other of felt.slice(i + 1)) between.push([one, other]);
    });
    const diary = summed(felt);
    jumping.push([speeds, jumps]);
    feeling.push([speeds, diary], [jumps, diary]);
  }
  return {
    betweenItems: tie(between, settings.betweenItems, settings),
    speedWithJump: tie(jumping, settings.speedWithJump, settings),
    withDiary: tie(feeling, settings.withDiary, settings),
  };
}

function tie(pairs: readonly Pair[], assumed: number, { tieWorth }: ReadinessSettings): number {
  let products = 0;
  let first = 0;
  let second = 0;
  let freedom = 0;
  for (const [one, other] of pairs) {
    let days = 0;
    for (const [day, a] of one) {
      const b = other.get(day);
      if (b === undefined) continue;
      products += a * b;
      first += a * a;
      second += b * b;
      days++;
    }
    freedom += Math.max(0, days - 1);
  }
  if (!(first > 0 && second > 0)) return assumed;
  const found = products / Math.sqrt(first * second);
  const drawn = (tieWorth * assumed + freedom * found) / (tieWorth + freedom);
  return Math.min(closest, Math.max(0, drawn));
}

/** Distances from the athlete's own mean in units, cut so that no single day decides. */
function deviations(
  values: readonly Dated[],
  unit: number,
  { clip }: ReadinessSettings,
): Deviations {
  const mean = values.reduce((sum, { value }) => sum + value, 0) / values.length;
  return new Map(
    values.map(({ day, value }) => [day, Math.min(clip, Math.max(-clip, (value - mean) / unit))]),
  );
}

/** A day's diary as one figure: the mean of its items, of two or more. */
function summed(felt: readonly Deviations[]): Deviations {
  const days = new Map<Day, number[]>();
  for (const item of felt) {
    for (const [day, value] of item) {
      const known = days.get(day);
      if (known) known.push(value);
      else days.set(day, [value]);
    }
  }
  const sums = new Map<Day, number>();
  for (const [day, values] of days) {
    if (values.length < 2) continue;
    sums.set(day, meanOf(values));
  }
  return sums;
}
