import type { Day } from "../../coaching/calendar/day";

/** Words beside the figures that belong to an athlete, a day or a week rather than to one row's record. */
export type RowNote = {
  /** A1 address in the range. */
  readonly cell: string;
  readonly row: number;
  readonly column: number;
  readonly athlete: string;
  /** The day, or the Monday of the week, the words belong to; null when there is none. */
  readonly day: Day | null;
  readonly span: "day" | "week" | "table";
  readonly words: string;
};
