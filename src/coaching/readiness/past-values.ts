import { meanOf } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import type { ReadinessSettings } from "./readiness-settings";

/** A value of one day. */
export type Dated = { readonly day: Day; readonly value: number };

/** The latest earlier values: up to twenty in the eight weeks before a day. */
export function pastDays(
  values: readonly Dated[],
  before: Day,
  { mostPast, pastDays: back }: ReadinessSettings,
): readonly Dated[] {
  return values.filter(({ day }) => day < before && day >= before - back).slice(-mostPast);
}

/** The same without their days. */
export function pastValues(
  values: readonly Dated[],
  before: Day,
  settings: ReadinessSettings,
): readonly number[] {
  return pastDays(values, before, settings).map(({ value }) => value);
}

const defaultWorth = 10;

/**
 * SD between days within athletes, pooled over a squad's recent values and steadied by a default
 * worth ten degrees of freedom.
 */
export function pooledSpread(squad: Iterable<readonly number[]>, usual: number): number {
  let squares = defaultWorth * usual ** 2;
  let freedom = defaultWorth;
  for (const values of squad) {
    if (values.length < 2) continue;
    const mean = meanOf(values);
    for (const value of values) squares += (value - mean) ** 2;
    freedom += values.length - 1;
  }
  return Math.sqrt(squares / freedom);
}
