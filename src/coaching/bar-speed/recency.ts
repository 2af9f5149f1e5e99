import type { Day } from "../calendar/day";
import { fromDay } from "../series/span-of-days";
import type { LineSettings } from "./line-settings";

/** A row that keeps less of its weight says nothing about now. */
const leastShare = 0.1;

/** Share of its weight that a row keeps after so many days. */
export function recencyWeight(ageDays: number, { halfLifeDays }: LineSettings): number {
  return 2 ** (-ageDays / halfLifeDays);
}

/** The recent rows, those that keep at least a tenth of their weight, of rows in order of day. */
export function recentRows<Row extends { readonly day: Day }>(
  rows: readonly Row[],
  now: Day,
  { halfLifeDays }: LineSettings,
): readonly Row[] {
  return fromDay(rows, now + halfLifeDays * Math.log2(leastShare));
}
