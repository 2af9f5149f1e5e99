import type { Day } from "../../coaching/calendar/day";
import type { ColumnAnswers } from "../header/column-answers";
import type { TabAnswers } from "../layout/tab-answers";
import type { NameAnswers } from "../name/name-answers";

/** What is known of a range beside its cells. */
export type ReadOptions = {
  /** The tab's name: it may be an athlete's, or carry a year. */
  readonly title?: string;
  /** Settles the year of dates written without one. */
  readonly today?: Day | null;
  /** What the coach said about columns. */
  readonly answers?: ColumnAnswers;
  /** The coach said that it is this table. */
  readonly said?: boolean;
  /** What the coach said of the whole tab. */
  readonly tab?: TabAnswers;
  /** What the coach said about spellings of names. */
  readonly names?: NameAnswers;
};
