import { baselineSessions } from "../figures";
import type { SetRows } from "../set-rows";
import { daySums } from "./day-sums";
import { squadSpread, zeroLoad } from "./squad-knowledge";
import { assumed, driftingLine, nestedLine, surer } from "./steadied-line";

const halfLifeDays = 42;
const leastRecency = 0.1;
const usualDrift = 0.0003 ** 2;

/**
 * The slopes that LOAD_SPEED_LINE prints, by hand: one pass over the cells into sums by day, then all
 * from those sums. Recent days weigh more, and the squad's speed at zero load steadies each line.
 */
export function slopesAsPrinted(rows: SetRows): readonly number[] {
  const now = Math.floor(rows.asOf.getTime() / 86_400_000);
  const weightOf = (day: number) => 2 ** ((day - now) / halfLifeDays);
  const found = daySums(rows);
  const squad = [...found.values()].map(({ days }) =>
    days.filter(({ day }) => weightOf(day) >= leastRecency),
  );
  const spread = squadSpread(
    squad.map((days) => ({ days, slope: nestedLine(days, assumed, null).slope })),
  );
  const prior = zeroLoad(
    squad.map((days) =>
      surer(nestedLine(days, spread, null, weightOf), driftingLine(days, spread, usualDrift)),
    ),
  );
  return rows.athletes.map(
    (name) => nestedLine(found.get(name)?.days ?? [], spread, prior, weightOf).slope,
  );
}

/**
 * The changes that SEASON_HOLD prints, by hand from the same sums: the marker's mean speed over the last
 * sessions less that of the baseline, as a part of the speed that the baseline's line, steadied by the
 * squad, has at the marker's load.
 *
 * @param sessionsNow how many sessions "now" is, by athlete, as the formula's own words say
 */
export function changesAsPrinted(rows: SetRows, sessionsNow: readonly number[]): readonly number[] {
  const found = daySums(rows);
  const squad = [...found.values()].map(({ days }) => ({
    season: days,
    baseline: days.slice(0, baselineSessions),
  }));
  const linesBy = (spread: typeof assumed) =>
    squad.map(({ season, baseline }) =>
      surer(
        nestedLine(baseline, spread, null),
        driftingLine(season, spread, Number.POSITIVE_INFINITY),
      ),
    );
  const first = linesBy(assumed);
  const spread = squadSpread(
    squad.map(({ baseline }, at) => ({ days: baseline, slope: first[at]?.slope ?? Number.NaN })),
  );
  const prior = zeroLoad(linesBy(spread));
  const mean = (of: readonly number[]) => of.reduce((sum, v) => sum + v, 0) / of.length;
  return rows.athletes.map((name, at) => {
    const { days = [], markers = [], markerKg = 0 } = found.get(name) ?? {};
    const { intercept, slope } = nestedLine(days.slice(0, baselineSessions), spread, prior);
    const now = mean(markers.slice(-(sessionsNow[at] ?? 0)));
    return (now - mean(markers.slice(0, baselineSessions))) / (intercept + slope * markerKg);
  });
}
