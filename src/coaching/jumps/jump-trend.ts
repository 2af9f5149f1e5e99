import type { Day } from "../calendar/day";
import type { HoldNote, HoldWord } from "../hold/season-hold";

/** One jump test from the season's own baseline to now. */
export type JumpTrend = {
  readonly word: HoldWord;
  readonly baselineCm: number;
  readonly nowCm: number;
  /** Change from baseline, fraction: −0.05 is 5 % lower. */
  readonly change: number;
  /** Smallest change these rows can tell from wobble, fraction. */
  readonly smallestChange: number;
  /** This athlete's wobble (typical error) of one test day, fraction. */
  readonly wobble: number;
  readonly sinceDay: Day | null;
  readonly baselineDays: number;
  readonly nowDays: number;
  /** Step between plate stacks, cm; null when heights were measured. */
  readonly stepCm: number | null;
  readonly notes: readonly HoldNote[];
};
