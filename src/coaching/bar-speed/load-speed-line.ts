import { accept, type Outcome, refuse } from "../../outcome";
import type { Day } from "../calendar/day";
import { type LeadingSets, leadingOffs, squadWorth } from "./leading-sets";
import { type LineFit, type LineRow, lineFit, type ZeroLoadPrior } from "./line-fit";
import type { LineSettings } from "./line-settings";
import { recentRows } from "./recency";

/**
 * Bar speed against load for one athlete and one lift: speed = intercept + slope · load, with the
 * uncertainty of both (variances and covariance) in `LineFit`. m/s, kg.
 */
export type LoadSpeedLine = LineFit & {
  /** SD of single sets around the line, m/s, steadied while sets are few. */
  readonly residualSd: number;
  /** SD of whole days and of sets within a day, m/s, as the line and its intervals take them. */
  readonly daySd: number;
  readonly setSd: number;
  /** Degrees of freedom of the day SD. */
  readonly spreadFreedom: number;
  /** How much faster than the line a first work set is, and the SD of a new one, m/s. */
  readonly firstSet: LeadingSets;
  readonly setsUsed: number;
  readonly daysUsed: number;
  readonly lightestKg: number;
  readonly heaviestKg: number;
  readonly lastDay: Day;
  /** The same of the recent sets, those that keep at least a tenth of their weight. */
  readonly recent: {
    readonly days: number;
    readonly lightestKg: number;
    readonly heaviestKg: number;
  };
};

/** Sets that the assumed day and set SDs are worth in the residual SD. */
const residualWorth = 10;

/**
 * The load–speed line of one athlete's sets, recent days weighing more, steadied by the squad's speed
 * at zero load.
 *
 * @param rows sets in one setting, in order of day
 * @param squadFirstSet how the squad's first work sets lie around their lines; without it a first set
 * is taken to be like any other
 * @returns refuses `no-speed-sets` without rows, `no-load-on-bar` when every load is zero, and
 * `line-not-falling` when speed does not fall with load
 */
export function loadSpeedLine(
  rows: readonly LineRow[],
  now: Day,
  prior: ZeroLoadPrior,
  settings: LineSettings,
  squadFirstSet?: LeadingSets,
): Outcome<LoadSpeedLine> {
  if (rows.length === 0) return refuse("no-speed-sets");
  const fit = lineFit(rows, now, prior, settings);
  if (!fit) return refuse("no-load-on-bar", { sets: rows.length });
  if (!(fit.slope < 0)) return refuse("line-not-falling", { sets: rows.length });
  const recent = recentRows(rows, now, settings);
  const all = extent(rows);
  const { daySd, setSd, spreadFreedom } = settings;
  let squares = 0;
  for (let at = 0; at < rows.length; at++) {
    const { loadKg, speed } = rows[at]!;
    squares += (speed - fit.intercept - fit.slope * loadKg) ** 2;
  }
  const freedom = Math.max(0, rows.length - 2);
  const { intercept, slope, interceptVariance, covariance, slopeVariance } = fit;
  return accept({
    intercept,
    slope,
    interceptVariance,
    covariance,
    slopeVariance,
    residualSd: Math.sqrt(
      (residualWorth * (daySd ** 2 + setSd ** 2) + squares) / (residualWorth + freedom),
    ),
    daySd,
    setSd,
    spreadFreedom,
    firstSet: squadFirstSet
      ? ownFirstSet(recent, fit, squadFirstSet)
      : { offset: 0, sd: Math.sqrt(daySd ** 2 + setSd ** 2), freedom: spreadFreedom },
    setsUsed: rows.length,
    lastDay: rows[rows.length - 1]!.day,
    daysUsed: all.days,
    lightestKg: all.lightestKg,
    heaviestKg: all.heaviestKg,
    recent: extent(recent),
  });
}

/** The athlete's own first sets, steadied by the squad's. */
function ownFirstSet(rows: readonly LineRow[], fit: LineFit, squad: LeadingSets): LeadingSets {
  const offs = leadingOffs(rows, fit, "work");
  if (offs.length === 0) return squad;
  const squares = offs.reduce((sum, off) => sum + (off - squad.offset) ** 2, 0);
  return {
    offset: squad.offset,
    sd: Math.sqrt((squadWorth * squad.sd ** 2 + squares) / (squadWorth + offs.length)),
    freedom: squadWorth + offs.length,
  };
}

/** Days and range of loads, kg, of rows in order of day. */
function extent(rows: readonly LineRow[]) {
  let lightestKg = Number.POSITIVE_INFINITY;
  let heaviestKg = 0;
  let days = 0;
  let last = Number.NaN;
  for (let at = 0; at < rows.length; at++) {
    const { day, loadKg } = rows[at]!;
    lightestKg = Math.min(lightestKg, loadKg);
    heaviestKg = Math.max(heaviestKg, loadKg);
    if (day !== last) days++;
    last = day;
  }
  return { days, lightestKg, heaviestKg };
}
