import type { Day } from "../calendar/day";

/** One row of the Athletes table. */
export type Athlete = {
  /** Row in the table's range, 1 is the range's first row. */
  readonly row: number;
  readonly athlete: string;
  readonly group: string;
  readonly event: string;
  /** A novice is expected to rise. Null: not recorded, then judged as trained. */
  readonly experience: "novice" | "trained" | null;
  readonly birthYear: number | null;
  /** A mark that the athlete is under 18; null when there is none and the birth year decides. */
  readonly under18: boolean | null;
  readonly supervisor: string;
  /** First day a supervisor's name counts, when the cell gives one ("A. Name from 5 May"). */
  readonly supervisorFrom: Day | null;
  readonly baselineFrom: Day | null;
  readonly baselineTo: Day | null;
  readonly sessionsAWeek: number | null;
  readonly notes: string;
  /** This athlete's own step up in load, fraction 0–0.1; left out or null takes the squad's. */
  readonly stepShare?: number | null;
};
