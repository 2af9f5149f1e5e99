import type { MeasureKind } from "./season-hold";
import { serialCorrelation } from "./serial-correlation";
import type { AthleteSeason } from "./squad-seasons";
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
};

/** Pools every athlete's baseline rows. */
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
  const errors = {
    speed: squadTypicalError(baselines.speed, usualError.speed),
    height: squadTypicalError(baselines.height, usualError.height),
    third: squadTypicalError(baselines.third, usualError.third),
  };
  return {
    errorOf: (kind) => errors[slotOf[kind]],
    serial: serialCorrelation(
      [...baselines.speed, ...baselines.height, ...baselines.third],
      athletes.size,
    ),
  };
}
