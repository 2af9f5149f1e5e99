import type { Day } from "../calendar/day";
import type { HoldNote, HoldWord } from "../hold/season-hold";

/** One jump test from the season's own baseline to now. */
export type JumpTrend = {
  /** By the season's evidence, as `SeasonHold`: repeated looks raise no more false flags. */
  readonly word: HoldWord;
  /** Mean of the baseline's test days; null without one. */
  readonly baselineCm: number | null;
  /** Mean of the test days since the onset, without one of the last four after the baseline. */
  readonly nowCm: number | null;
  /** Change from baseline, fraction: −0.05 is 5 % lower. */
  readonly change: number | null;
  /** Smallest change that matters: what these rows can tell from wobble (90 %), fraction. */
  readonly smallestChange: number | null;
  /** This athlete's wobble (typical error) of one test day, fraction. */
  readonly wobble: number | null;
  readonly sinceDay: Day | null;
  readonly baselineDays: number;
  readonly nowDays: number;
  /** Test days still needed for a word. */
  readonly daysNeeded: number;
  /** Step between stacks or heights, cm; null when there is none. */
  readonly stepCm: number | null;
  readonly notes: readonly HoldNote[];
};
