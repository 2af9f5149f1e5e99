import type { Day } from "../calendar/day";

export type ReadinessWord =
  | "as usual"
  | "below usual"
  | "well below usual"
  | "above usual"
  | "too few rows";

export type ReadinessItem = "sleep" | "sleep quality" | "soreness" | "fatigue" | "stress" | "mood";

/** One reading of the day against that athlete's usual. */
export type ReadinessPart = {
  readonly part: "speed" | "jump" | ReadinessItem;
  /** Lift or test as the coach writes it; empty for a diary item. */
  readonly of: string;
  /** What the two figures below are. */
  readonly unit: "m/s" | "cm" | "s" | "h" | "points";
  /** Distance from usual as a standard normal score; above zero is good. */
  readonly z: number;
  /** Speed: of today's marker or first work set, and what its load usually moves at. */
  readonly today: number;
  readonly usual: number;
  readonly pastRows: number;
};

/** A reading of the day with too few earlier ones, and how many more days with it are needed. */
export type ReadinessGap = Pick<ReadinessPart, "part" | "of"> & { readonly rows: number };

/** One day against usual. */
export type Readiness = {
  readonly athlete: string;
  readonly day: Day;
  readonly word: ReadinessWord;
  /** Combined distance from usual in units of the athlete's own wobble; null for too few rows. */
  readonly size: number | null;
  /** The reading that says most; null when the day is as usual. */
  readonly reason: ReadinessPart | null;
  readonly parts: readonly ReadinessPart[];
  /** Empty for `too few rows` when nothing at all was recorded that day. */
  readonly needed: readonly ReadinessGap[];
};
