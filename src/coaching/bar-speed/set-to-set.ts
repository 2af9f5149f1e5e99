import type { Day } from "../calendar/day";

/** One later set of the session against its first. */
export type SetAgainstFirst = {
  /** 2 for the second work set. */
  readonly set: number;
  /** Change of speed against the first set, fraction: −0.03 is 3 % slower. */
  readonly change: number;
  /** This athlete's usual change at this set and the range an ordinary day stays in; null when unknown. */
  readonly usual: number | null;
  readonly usualLow: number | null;
  readonly usualHigh: number | null;
};

/** How a session's sets followed one another, against that athlete's own habit. */
export type SetToSet = {
  readonly day: Day;
  readonly setsUsed: number;
  /** Fractions, as `change` above. */
  readonly secondVsFirst: number;
  readonly lastVsFirst: number;
  /** Usual last against first at the same number of sets; null with fewer than four earlier sessions. */
  readonly usualLastVsFirst: number | null;
  /** Earlier sessions the habit rests on. */
  readonly usualSessions: number;
  /** Number of the first set outside the usual range; null when none is, or the habit is not known. */
  readonly leftUsualAtSet: number | null;
  readonly word: "as usual" | "slower than usual" | "faster than usual" | "too few rows";
  readonly sets: readonly SetAgainstFirst[];
  /** Sets of the session left out since their load differs from the first set's. */
  readonly otherLoadSets: number;
};
