import { type LineFit, type LineRow, lineFit } from "./line-fit";
import type { LineSettings } from "./line-settings";

/** Degrees of freedom that each assumed SD is worth, and the least either is taken to be, m/s. */
const assumedWorth = 10;
const leastSd = 0.008;

/**
 * The day and set SDs as the squad's own rows show them: squares within days and of day means around
 * each athlete's line, pooled, and steadied by the assumed SDs worth ten degrees of freedom each
 * (analysis of variance of nested errors; Fuller & Battese 1974).
 *
 * @param squad each athlete's rows, in order of day; `line` when one is known that fits better
 * @returns the settings with those SDs
 */
export function withSquadSpread(
  squad: readonly { readonly rows: readonly LineRow[]; readonly line?: LineFit | null }[],
  settings: LineSettings,
): LineSettings {
  let withinSquares = assumedWorth * settings.setSd ** 2;
  let withinFreedom = assumedWorth;
  const means: { squares: number; inverseSets: number; freedom: number }[] = [];
  for (const { rows, line = lineFit(rows, null, null, settings) } of squad) {
    const days = daysOf(rows);
    if (days.length < 3) continue;
    const slope = line?.slope ?? 0;
    const offs = days.map((day) => day.map(({ loadKg, speed }) => speed - slope * loadKg));
    const dayMeans = offs.map(mean);
    const level = mean(dayMeans);
    let squares = 0;
    let inverseSets = 0;
    for (const [d, values] of offs.entries()) {
      for (const value of values) withinSquares += (value - dayMeans[d]!) ** 2;
      withinFreedom += values.length - 1;
      squares += (dayMeans[d]! - level) ** 2;
      inverseSets += 1 / values.length / days.length;
    }
    // Level and slope are taken from the same days.
    means.push({ squares, inverseSets, freedom: days.length - 2 });
  }
  const setVariance = Math.max(leastSd ** 2, withinSquares / withinFreedom);
  let daySquares = assumedWorth * settings.daySd ** 2;
  let dayFreedom = assumedWorth;
  for (const { squares, inverseSets, freedom } of means) {
    daySquares += squares - freedom * setVariance * inverseSets;
    dayFreedom += freedom;
  }
  const dayVariance = Math.max(leastSd ** 2, daySquares / dayFreedom);
  return {
    ...settings,
    daySd: Math.sqrt(dayVariance),
    setSd: Math.sqrt(setVariance),
    spreadFreedom: settings.spreadFreedom + dayFreedom - assumedWorth,
  };
}

function daysOf(rows: readonly LineRow[]): readonly (readonly LineRow[])[] {
  const days: LineRow[][] = [];
  for (const row of rows) {
    const day = days[days.length - 1];
    if (day && day[0]!.day === row.day) day.push(row);
    else days.push([row]);
  }
  return days;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
