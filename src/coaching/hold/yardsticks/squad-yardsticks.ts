import { serialCorrelation } from "../evidence/serial-correlation";
import { runInflation } from "../evidence/serial-variance";
import type { MeasureKind } from "../season-hold";
import type { AthleteSeason } from "../squad-seasons";
import { betweenMeasures } from "./between-measures";
import { type LevelPrior, lastSeasonLevels } from "./last-season-level";
import { squadTypicalError } from "./squad-typical-error";

/** Usual typical errors of one session, percent (simulated runners' gyms, no outside source). */
const usualError = { speed: 4.5, height: 4, third: 4.5 };

const slotOf: Record<MeasureKind, keyof typeof usualError> = {
  "bar speed": "speed",
  "jump height": "height",
  "reactive strength": "third",
  "contact time": "third",
};

/** What the squad as a whole says about wobble. */
export type SquadYardsticks = {
  /** Typical error of one session, percent. */
  readonly errorOf: (kind: MeasureKind) => number;
  /** Correlation of one session's error with the next; 0 when there is none worth allowing for. */
  readonly serial: number;
  /** Correlation of two measures of one session. */
  readonly between: number;
  /** What last season says of a season's levels, in order of its measures. */
  readonly levelsOf: (season: AthleteSeason) => readonly (LevelPrior | null)[];
};

/** Pools every athlete's rows: the baselines for wobble, the season so far for what errs together. */
export function squadYardsticks(seasons: readonly AthleteSeason[]): SquadYardsticks {
  const baselines: Record<keyof typeof usualError, (readonly number[])[]> = {
    speed: [],
    height: [],
    third: [],
  };
  const athletes = new Set<AthleteSeason>();
  for (const season of seasons) {
    season.measures.forEach(({ kind }, m) => {
      const baseline = season.values[m]!.slice(0, season.baselineSessions);
      if (baseline.every(Number.isNaN)) return;
      baselines[slotOf[kind]].push(baseline);
      athletes.add(season);
    });
  }
  const serial = serialCorrelation(
    seasons.flatMap(({ values }) => values),
    athletes.size,
  );
  const errorFrom = (slot: keyof typeof usualError) =>
    squadTypicalError(baselines[slot], usualError[slot]) / narrowing(baselines[slot], serial);
  const errors = {
    speed: errorFrom("speed"),
    height: errorFrom("height"),
    third: errorFrom("third"),
  };
  const errorOf = (kind: MeasureKind) => errors[slotOf[kind]];
  const levels = lastSeasonLevels(seasons, errorOf);
  return {
    errorOf,
    serial,
    between: betweenMeasures(seasons, errorOf),
    levelsOf: (season) => levels.get(season)!,
  };
}

/**
 * Readings that follow one another are nearer their own mean than independent ones: the SD about it is
 * this much too small, √((n − i)/(n − 1)) of n rows whose mean's variance is i times the usual.
 */
function narrowing(baselines: readonly (readonly number[])[], serial: number): number {
  let rows = 0;
  let lists = 0;
  for (const baseline of baselines) {
    const readings = baseline.filter((value) => !Number.isNaN(value)).length;
    if (readings < 2) continue;
    rows += readings;
    lists++;
  }
  if (lists === 0) return 1;
  const n = rows / lists;
  return Math.sqrt((n - runInflation(n, serial)) / (n - 1));
}
