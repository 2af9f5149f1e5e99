import type { Day } from "../calendar/day";
import { type LeadingSets, leadingSets } from "./leading-sets";
import { type LineFit, type LineRow, lineFit, type ZeroLoadPrior } from "./line-fit";
import { lineFitWithDrift } from "./line-fit-with-drift";
import type { LineSettings } from "./line-settings";
import { recentRows } from "./recency";
import { withSquadSpread } from "./squad-spread";
import { allLines, squadZeroLoad } from "./squad-zero-load";

/** What a squad's rows of one lift say together, to steady each athlete's line. */
export type SquadLift = {
  /** The settings with the squad's own day and set SDs. */
  readonly settings: LineSettings;
  readonly prior: ZeroLoadPrior;
  readonly leads: { readonly marker: LeadingSets; readonly work: LeadingSets };
};

/** SD of a level's drift, m/s a day: some 4 % of a usual speed in twelve weeks (simulation, no source). */
const usualDrift = 0.0003;

/**
 * Spread around the lines and speed at zero load, from every athlete's recent rows.
 *
 * @param squad each athlete's rows in one setting, in order of day
 */
export function squadLift(
  squad: Iterable<readonly LineRow[]>,
  now: Day,
  assumed: LineSettings,
): SquadLift {
  const recent = Array.from(squad, (rows) => recentRows(rows, now, assumed));
  const settings = withSquadSpread(
    recent.map((rows) => ({ rows })),
    assumed,
  );
  const lines = recent.map((rows) =>
    surerLine(lineFit(rows, now, null, settings), lineFitWithDrift(rows, settings, usualDrift)),
  );
  const prior = squadZeroLoad(lines, settings, allLines);
  const steadied = recent.map((rows) => ({ rows, line: lineFit(rows, now, prior, settings) }));
  return {
    settings,
    prior,
    leads: {
      marker: leadingSets(steadied, "marker", settings),
      work: leadingSets(steadied, "work", settings),
    },
  };
}

/** Of two lines the one that knows its intercept better. */
export function surerLine(a: LineFit | null, b: LineFit | null): LineFit | null {
  if (!a || !b) return a ?? b;
  return b.interceptVariance < a.interceptVariance ? b : a;
}
