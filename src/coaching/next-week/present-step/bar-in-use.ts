import type { LiftingSet } from "../../record/lifting-set";
import { byUse } from "./by-use";

/** The bar that plates are reckoned for, and the one most sets before it were done with, kg; null where it is the same. */
export type BarInUse = { readonly barKg: number; readonly barBeforeKg: number | null };

const lastSets = 60;
const newBarDays = 2;

/**
 * The bar of the last two days in the gym used most: a new bar is in use from then on, and one session
 * away, or any in another gym, changes nothing. Where those days differ, the bar used most.
 *
 * @param lift one athlete's sets of a lift, in order
 * @param unwrittenKg the bar where no row says which, kg
 */
export function barInUse(lift: readonly LiftingSet[], unwrittenKg: number): BarInUse {
  const rows = lift.filter(({ barKg }) => barKg !== null).slice(-lastSets);
  const most = byUse(rows.map(({ barKg }) => barKg!))[0] ?? unwrittenKg;
  const [home] = byUse(rows.map(({ gym }) => gym));
  const there = rows.filter(({ gym }) => gym === home);
  const days = [...new Set(there.map(({ day }) => day))].slice(-newBarDays);
  const bars = new Set(there.flatMap(({ day, barKg }) => (days.includes(day) ? [barKg!] : [])));
  const [one] = bars;
  return bars.size === 1 && days.length === newBarDays && one !== most
    ? { barKg: one!, barBeforeKg: most }
    : { barKg: most, barBeforeKg: null };
}
