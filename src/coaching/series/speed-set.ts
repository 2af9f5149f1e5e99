import type { Day } from "../calendar/day";
import type { LiftingSet } from "../record/lifting-set";
import { nameKey } from "../record/name-key";

/**
 * What a speed was taken with. Speeds of two settings are not compared: tools, mean and peak, bars
 * and gyms differ by more than a season does. A blank cell is a setting of its own, not a guess.
 */
export type Setting = {
  readonly tool: string;
  readonly speedIs: "mean" | "peak" | null;
  readonly barKg: number | null;
  readonly gym: string;
  /** Fastest repetition, or the mean over repetitions when only that was kept. */
  readonly figure: "best rep" | "mean of reps" | null;
};

/** A marker or work set with a speed. */
export type SpeedSet = {
  readonly day: Day;
  readonly marker: boolean;
  readonly loadKg: number | null;
  /** Fastest repetition, or the set's recorded figure when repetitions were not kept; m/s. */
  readonly speed: number;
  /** One object for each different setting, so that settings compare by identity. */
  readonly setting: Setting;
  readonly set: LiftingSet;
  /** The first marker set, or the first work set, of its day; null for any later one. */
  readonly leads: "marker" | "work" | null;
};

/** A speed set whose load is known. */
export type LoadedSet = SpeedSet & { readonly loadKg: number };

/** Fastest repetition of a set, 0 when none was kept. */
function fastestRepOf(set: LiftingSet): number {
  const known = set.fastestRep;
  if (known !== undefined) return known;
  let fastest = 0;
  for (const speed of set.repSpeeds) if (speed !== null && speed > fastest) fastest = speed;
  return fastest;
}

/** Says of sets of one lift, in order of day and of doing, which lead their day. */
export function withLeads(sets: readonly SpeedSet[]): readonly SpeedSet[] {
  let markerDay = Number.NaN;
  let workDay = Number.NaN;
  for (let at = 0; at < sets.length; at++) {
    const set = sets[at]!;
    const first = (set.marker ? markerDay : workDay) !== set.day;
    if (set.marker) markerDay = set.day;
    else workDay = set.day;
    // Made by the reader above a moment ago, and nobody else's yet.
    if (first) (set as { leads: SpeedSet["leads"] }).leads = set.marker ? "marker" : "work";
  }
  return sets;
}

/** Reads sets into speed sets; warm-ups and sets without a speed give none. */
export function speedSetReader(): (set: LiftingSet) => SpeedSet | null {
  const spellings = new Map<string, Setting>();
  const settings = new Map<string, Setting>();
  // Rows of one setting come in runs: the last one is looked at first.
  let last: Setting | null = null;
  const settingOf = (set: LiftingSet, figure: Setting["figure"]): Setting => {
    const { tool, speedIs, barKg, gym } = set;
    if (
      last !== null &&
      last.tool === tool &&
      last.gym === gym &&
      last.barKg === barKg &&
      last.speedIs === speedIs &&
      last.figure === figure
    )
      return last;
    const spelling = `${tool}\n${gym}\n${speedIs}\n${barKg}\n${figure}`;
    const known = spellings.get(spelling);
    if (known) {
      last = known;
      return known;
    }
    const key = `${nameKey(tool)}\n${nameKey(gym)}\n${speedIs}\n${barKg}\n${figure}`;
    const setting = settings.get(key) ?? { tool, speedIs, barKg, gym, figure };
    settings.set(key, setting);
    spellings.set(spelling, setting);
    last = setting;
    return setting;
  };
  return (set) => {
    const { kind } = set;
    if (kind === "warm-up") return null;
    const fastest = fastestRepOf(set);
    const speed = fastest > 0 ? fastest : set.setSpeed;
    if (speed === null || !(speed > 0)) return null;
    return {
      day: set.day,
      marker: kind === "marker",
      loadKg: set.loadKg,
      speed,
      setting: settingOf(set, fastest > 0 ? "best rep" : set.setSpeedIs),
      set,
      leads: null,
    };
  };
}
