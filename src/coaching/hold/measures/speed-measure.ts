import { speedOnLine } from "../../bar-speed/expected-speed";
import { type LineFit, lineFit, type ZeroLoadPrior } from "../../bar-speed/line-fit";
import { lineFitWithDrift } from "../../bar-speed/line-fit-with-drift";
import type { LineSettings } from "../../bar-speed/line-settings";
import { surerLine } from "../../bar-speed/squad-lift";
import { lineRows } from "../../bar-speed/squad-lines";
import type { Day } from "../../calendar/day";
import { fromDay, upToDay } from "../../series/span-of-days";
import type { LoadedSet, SpeedSet } from "../../series/speed-set";
import type { HoldNote } from "../season-hold";
import { earlierRuns } from "./earlier-runs";
import { farOffNotes } from "./far-off-sets";
import {
  commonest,
  type SeasonDays,
  type SeasonMeasure,
  stretchedBaseline,
} from "./season-measure";
import { sessionReadings } from "./session-readings";
import { firstOfDays, settingNotes } from "./setting-notes";

/** A lift's season before the squad's line is known. */
export type LiftSeason = {
  readonly of: string;
  readonly days: SeasonDays;
  /** Sets of the season in the baseline's setting, with a load. */
  readonly rows: readonly LoadedSet[];
  /** Those of the baseline, marker and work sets alike, for the line. */
  readonly baselineRows: readonly LoadedSet[];
  /** Sets of earlier seasons in the same setting. */
  readonly earlier: readonly LoadedSet[];
  readonly notes: readonly HoldNote[];
};

/**
 * Picks the sets of a season that can be compared: those in the setting (tool, mean or peak, bar,
 * gym, figure) that most sessions of the baseline were taken in. The rest are counted in a note and
 * never read as a slip or a rise.
 */
export function liftSeason(all: readonly SpeedSet[], given: SeasonDays): LiftSeason | null {
  const loaded = lineRows(all);
  const season = fromDay(loaded, given.from);
  if (season.length === 0) return null;
  const days = stretchedBaseline(
    firstOfDays(season).map(({ day }) => day),
    given,
  );
  const inBaseline = firstOfDays(upToDay(season, days.baselineTo));
  const setting = commonest(inBaseline.map((set) => set.setting)) ?? season[0]!.setting;
  const rows = lineRows(season, setting);
  return {
    of: season[0]!.set.exercise,
    days,
    rows,
    baselineRows: upToDay(rows, days.baselineTo),
    earlier: lineRows(upToDay(loaded, given.from - 1), setting),
    notes: [...settingNotes(season, setting, days), ...farOffNotes(rows)],
  };
}

/**
 * Bar speed as percent off the baseline's own load–speed line: 100·(speed − line at that load)/(line
 * at the baseline's mean load). A session speaks with its marker sets where the baseline has markers
 * (one load all block, so the slope hardly matters), else with all its work sets.
 *
 * @returns null when the baseline's rows give no line
 */
export function speedMeasure(
  lift: LiftSeason,
  prior: ZeroLoadPrior,
  settings: LineSettings,
): SeasonMeasure | null {
  // The season is held against its baseline as it was: no session of it weighs more than another.
  const line = lineFit(lift.baselineRows, null, prior, settings);
  if (!line || !(line.slope < 0)) return null;
  const speaking = speakingSets(lift);
  const baseline = firstOfDays(upToDay(speaking, lift.days.baselineTo));
  // No number where no set of the baseline speaks.
  const meanLoad = baseline.reduce((sum, { loadKg }) => sum + loadKg, 0) / baseline.length;
  const reference = speedOnLine(line, meanLoad).speed;
  if (!(reference > 0)) return null;
  const slopeError = (100 * Math.sqrt(line.slopeVariance)) / reference;
  const { intercept, slope } = line;
  const percentOf = ({ speed, loadKg }: LoadedSet) =>
    (100 * (speed - (intercept + slope * loadKg))) / reference;
  const percents = new Map<Day, number>();
  const loadErrors = new Map<Day, number>();
  for (const { day, percent, loadKg } of sessionReadings(speaking, percentOf)) {
    percents.set(day, percent);
    loadErrors.set(day, (loadKg - meanLoad) * slopeError);
  }
  const sameKind = lift.earlier.filter(({ marker }) => marker === speaking[0]!.marker);
  return {
    kind: "bar speed",
    of: lift.of,
    percents,
    earlier: earlierRuns(sessionReadings(sameKind, percentOf)),
    loadErrors,
    stepPercent: 0,
    valueAt: (percent) => reference * (1 + percent / 100),
    plainPercent: (difference) => difference,
    notes: lift.notes,
  };
}

/**
 * The lift's own line without a prior, for what the squad knows together: the baseline's, or the
 * season's so far with a steady drift, whichever knows its intercept better.
 */
export function ownLine(
  { rows, baselineRows }: LiftSeason,
  settings: LineSettings,
): LineFit | null {
  return surerLine(lineFit(baselineRows, null, null, settings), lineFitWithDrift(rows, settings));
}

const leastMarkers = 3;

function speakingSets({ rows, baselineRows }: LiftSeason): readonly LoadedSet[] {
  const markers = firstOfDays(baselineRows.filter(({ marker }) => marker));
  const byMarker = markers.length >= leastMarkers;
  return rows.filter(({ marker }) => marker === byMarker);
}
