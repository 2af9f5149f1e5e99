import type { Day } from "../calendar/day";
import type { LoadedSet } from "../series/speed-set";

/** `level` is `holding` said of a novice, who is expected to rise. */
export type HoldWord = "too few rows" | "holding" | "level" | "slipping" | "rising";

export type MeasureKind = "bar speed" | "jump height" | "reactive strength" | "contact time";

/** One value watched over the season. Percent are of the season's own baseline. */
export type HoldMeasure = {
  readonly kind: MeasureKind;
  /** The lift or test, as the coach writes it: "back squat", "box jump". */
  readonly of: string;
  readonly baselineRows: number;
  /** Sessions after the baseline, and those the change is read from: since the onset, without one the last four. */
  readonly rowsAfter: number;
  readonly rowsSince: number;
  /**
   * Mean since the onset (without one: of the last four sessions) minus baseline, percent; below zero
   * is a loss for every kind: contact time counts the other way round. Null without rows.
   */
  readonly change: number | null;
  /** Standard error of the change, percent (of 100·ln for jumps and contacts). */
  readonly changeError: number | null;
  /** This athlete's typical error of one session, percent. */
  readonly wobble: number;
  /** Baseline mean and mean since, in the value's own unit: m/s at the baseline's mean load, cm, m/s, s. */
  readonly baselineValue: number;
  readonly nowValue: number | null;
};

/** A value that has moved, as a sentence needs it. */
export type MovedValue = Readonly<{
  [Field in "kind" | "of" | "change" | "baselineValue" | "nowValue"]: NonNullable<
    HoldMeasure[Field]
  >;
}>;

/** A measure that cannot be followed yet, and how many more sessions with it are needed. */
export type MissingRows = {
  readonly kind: MeasureKind;
  readonly of: string;
  readonly rows: number;
};

/** Something the reader of the word should know; sentences are made from the code and facts. */
export type HoldNote = {
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
  /** The sets it is about, where it is about sets. */
  readonly far?: readonly FarOffSet[];
};

/** A set whose speed hardly fits its load, and what the athlete usually shows. */
export type FarOffSet = {
  readonly set: LoadedSet;
  /** Usual speed at that load, m/s, and usual load at that speed, kg; null where the line has none. */
  readonly usualSpeed: number | null;
  readonly usualKg: number | null;
};

/** One session of the chart: percent against baseline, null where the measure is missing. */
export type HoldSession = {
  readonly day: Day;
  readonly inBaseline: boolean;
  /** In the order of `measures`. */
  readonly percents: readonly (number | null)[];
};

/** Baseline to now for one athlete. */
export type SeasonHold = {
  readonly athlete: string;
  readonly asOf: Day;
  readonly word: HoldWord;
  /** Likeliest first session of the change, and the days that hold it with 80 %. */
  readonly sinceDay: Day | null;
  readonly sinceFrom: Day | null;
  readonly sinceTo: Day | null;
  /**
   * The value that moved most against its uncertainty; for `holding` one that has clearly fallen by as
   * much as would show, else the first with a session since the baseline.
   */
  readonly value: HoldMeasure | null;
  readonly measures: readonly HoldMeasure[];
  /** A fall in all measures of this many percent would usually show within six more sessions. */
  readonly visibleFall: number | null;
  /** Evidence for a fall and for a rise, and the limit either must reach. */
  readonly evidenceLow: number;
  readonly evidenceHigh: number;
  readonly limit: number;
  readonly baseline: {
    readonly from: Day | null;
    readonly to: Day | null;
    readonly sessions: number;
    /** True when the Athletes table gives its dates. */
    readonly own: boolean;
  };
  readonly sessions: readonly HoldSession[];
  readonly needed: readonly MissingRows[];
  readonly notes: readonly HoldNote[];
};
