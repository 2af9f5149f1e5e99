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
  /** Lift or test; empty for a diary item. */
  readonly of: string;
  /** Distance from usual as a standard normal score; above zero is good. */
  readonly z: number;
  /** Today and usual in the value's own unit: m/s at today's load, cm, hours, points of the scale. */
  readonly today: number;
  readonly usual: number;
  readonly pastRows: number;
};

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
  /** Readings taken that day with too few earlier ones, and how many more are needed. */
  readonly needed: readonly { readonly part: string; readonly of: string; readonly rows: number }[];
};
