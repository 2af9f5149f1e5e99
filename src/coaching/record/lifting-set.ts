import type { Day } from "../calendar/day";

export type SetKind = "warm-up" | "marker" | "work";

/** One set of a lift, put together from one row or from one row per repetition. */
export type LiftingSet = {
  /** Row in the table's range (of the first repetition), 1 is the range's first row. */
  readonly row: number;
  readonly day: Day;
  /** Minutes after midnight when the row gives a time. */
  readonly minute: number | null;
  readonly athlete: string;
  /** As written; compare with `exerciseKey`. */
  readonly exercise: string;
  /** Number of the work set in its session; null when not recorded. */
  readonly set: number | null;
  readonly kind: SetKind;
  readonly reps: number | null;
  /** Whole load on the bar, kg; null when not recorded. */
  readonly loadKg: number | null;
  /** True when `loadKg` is what one hand holds ("16/hand"), not the load of a bar. */
  readonly loadPerHand?: boolean;
  /** m/s, one place for each repetition in order; null where a repetition was not read. */
  readonly repSpeeds: readonly (number | null)[];
  /** Fastest of `repSpeeds`, 0 without any, where the reader looks it up; left out otherwise. */
  readonly fastestRep?: number;
  /** m/s; the set's one recorded figure when single repetitions were not kept. */
  readonly setSpeed: number | null;
  /** What `setSpeed` is. */
  readonly setSpeedIs: "mean of reps" | "best rep" | null;
  readonly speedIs: "mean" | "peak" | null;
  readonly tool: string;
  readonly barKg: number | null;
  readonly gym: string;
  /** Null means not recorded: hold, never progress. */
  readonly movedWell: boolean | null;
  readonly repsInReserve: number | null;
  readonly by: string;
  readonly note: string;
};
