import type { Day } from "../calendar/day";
import type { SpeedSet } from "../series/speed-set";

/** One later set of the session against its first. */
export type SetAgainstFirst = {
  /** Its number in the session; 2 for the second work set. */
  readonly set: number;
  /** Change of speed against the first set, fraction: −0.03 is 3 % slower. */
  readonly change: number;
  /** Usual change at this set, and the range ordinary sessions stay in; null when not known. */
  readonly usual: number | null;
  readonly usualLow: number | null;
  readonly usualHigh: number | null;
};

/** How a session's sets followed one another, against that athlete's own habit. */
export type SetToSet = {
  readonly day: Day;
  /** Work sets with a speed in the session. */
  readonly setsUsed: number;
  /** Fractions, as `change` above; the second set's is null when its load differs from the first's. */
  readonly secondVsFirst: number | null;
  readonly lastVsFirst: number;
  /** Usual last against first at that number of sets; null with fewer than four earlier sessions. */
  readonly usualLastVsFirst: number | null;
  /** Earlier sessions the habit of the last set rests on. */
  readonly usualSessions: number;
  /** Number of the first set outside the usual range; null when none is, or the habit is not known. */
  readonly leftUsualAtSet: number | null;
  readonly word: "as usual" | "slower than usual" | "faster than usual" | "too few rows";
  /** The sets that could be compared, in order. */
  readonly sets: readonly SetAgainstFirst[];
  /** Sets left out as their load or setting differs from the first set's. */
  readonly notCompared: number;
};

/**
 * Whether one set alone left the usual: misread or broken off, not a session that fell away, as all sets
 * after it were as usual again.
 */
export function leftUsualOnce({ leftUsualAtSet, sets }: SetToSet): boolean {
  const later = sets.filter(({ set }) => leftUsualAtSet !== null && set > leftUsualAtSet);
  return (
    later.length > 0 &&
    later.every(
      ({ change, usualLow, usualHigh }) =>
        usualLow !== null && usualHigh !== null && change >= usualLow && change <= usualHigh,
    )
  );
}

/** Change of one later set, as logarithm in percent, by its place in the session. */
export type SessionPattern = {
  readonly day: Day;
  readonly workSets: number;
  readonly notCompared: number;
  readonly later: readonly { readonly set: number; readonly logChange: number }[];
};

/**
 * Each later work set of a day against the first, over the repetitions both have: a set of three
 * against a set of five compares the first three of each. Only sets at the first set's load and in
 * its setting are compared. Warm-ups and the marker set are no work sets: where numbers count on from
 * the marker's, they are counted anew from the first work set. Where numbers begin again at the same
 * load, so does the session: of two on a day the later one is told.
 *
 * @param sets of one lift and one day
 */
export function sessionPattern(sets: readonly SpeedSet[]): SessionPattern | null {
  const { from, markers } = laterSession(sets);
  const first = sets[from];
  if (first === undefined) return null;
  const later: { set: number; logChange: number }[] = [];
  let workSets = 1;
  for (let at = from + 1; at < sets.length; at++) {
    const set = sets[at]!;
    if (set.marker) continue;
    workSets++;
    const ratio = isAlike(set, first) ? speedRatio(first, set) : null;
    if (ratio === null) continue;
    const number = set.set.set === null ? workSets : set.set.set - markers;
    later.push({ set: number, logChange: 100 * Math.log(ratio) });
  }
  return { day: first.day, workSets, notCompared: workSets - 1 - later.length, later };
}

const isAlike = (set: SpeedSet, first: SpeedSet) =>
  set.loadKg === first.loadKg && set.setting === first.setting;

/**
 * Where the day's later session begins, −1 without a work set, and how many marker sets its numbers count
 * on from. It begins where numbers that had gone on from the first set's are back at it, at the same load.
 */
function laterSession(sets: readonly SpeedSet[]) {
  let from = -1;
  let begun = 0;
  let last = 0;
  let markers = 0;
  for (let at = 0; at < sets.length; at++) {
    const set = sets[at]!;
    const number = set.set.set ?? 0;
    if (set.marker) {
      if (from < 0) markers = Math.max(markers, number);
      continue;
    }
    const isBack = number > 0 && number <= begun && last > begun;
    if (from < 0 || (isBack && isAlike(set, sets[from]!))) {
      from = at;
      begun = number;
      if (number <= markers) markers = 0;
    }
    last = number;
  }
  return { from, markers };
}

/** Mean speed of the later set over that of the first, over repetitions read in both. */
function speedRatio(first: SpeedSet, later: SpeedSet): number | null {
  const firstSpeeds = first.set.repSpeeds;
  const laterSpeeds = later.set.repSpeeds;
  let sumFirst = 0;
  let sumLater = 0;
  for (let rep = 0; rep < Math.min(firstSpeeds.length, laterSpeeds.length); rep++) {
    const a = firstSpeeds[rep]!;
    const b = laterSpeeds[rep]!;
    if (a === null || b === null) continue;
    sumFirst += a;
    sumLater += b;
  }
  if (sumFirst > 0 && sumLater > 0) return sumLater / sumFirst;
  const a = first.set.setSpeed ?? 0;
  const b = later.set.setSpeed ?? 0;
  return a > 0 && b > 0 ? b / a : null;
}
