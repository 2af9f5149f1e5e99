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
    const { days, level, inverseSets } = dayMeans(rows, line?.slope ?? 0);
    if (days.length < 3) continue;
    let squares = 0;
    for (const { mean, squares: within, sets } of days) {
      withinSquares += within;
      withinFreedom += sets - 1;
      squares += (mean - level) ** 2;
    }
    // Level and slope are taken from the same days.
    means.push({
      squares,
      inverseSets: inverseSets / days.length,
      freedom: days.length - 2,
    });
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

/** Each day's mean speed off a slope, its squares within, and the mean of the days' means. */
function dayMeans(rows: readonly LineRow[], slope: number) {
  const days: { readonly mean: number; readonly squares: number; readonly sets: number }[] = [];
  let level = 0;
  let inverseSets = 0;
  for (let start = 0, end = 0; start < rows.length; start = end) {
    const { day } = rows[start]!;
    let sum = 0;
    for (; end < rows.length && rows[end]!.day === day; end++) sum += offSlope(rows[end]!, slope);
    const sets = end - start;
    const mean = sum / sets;
    let squares = 0;
    for (let at = start; at < end; at++) squares += (offSlope(rows[at]!, slope) - mean) ** 2;
    days.push({ mean, squares, sets });
    level += mean;
    inverseSets += 1 / sets;
  }
  return { days, level: level / days.length, inverseSets };
}

const offSlope = ({ speed, loadKg }: LineRow, slope: number) => speed - slope * loadKg;
