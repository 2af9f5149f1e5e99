import type { ReadinessItem } from "./readiness";

/**
 * Constants of the day against usual. Percent for speed and jump, the written unit for diary items.
 * Defaults, weights and correlations come from simulated days of runners (no outside source) unless
 * a source is named.
 */
export type ReadinessSettings = {
  /** Degrees of freedom the squad's SD is worth, and the share of its variance it is taken at. */
  readonly squadWorth: number;
  readonly squadShare: number;
  /** Earlier readings a part needs, how many are read at most, and how far back, days. */
  readonly leastPast: number;
  readonly mostPast: number;
  readonly pastDays: number;
  /** Most units of wobble that one part may count. */
  readonly clip: number;
  /** Reliability of a single reading. */
  readonly speedTrust: number;
  readonly jumpTrust: number;
  /**
   * Correlation of two diary items, of speed with jump, of either with the diary, before the squad's
   * rows say better, and how many days of pairs that is worth.
   */
  readonly tieWorth: number;
  readonly betweenItems: number;
  readonly speedWithJump: number;
  /** Weak, as reviewed by Saw, Main & Gastin 2016 (Br J Sports Med 50:281–291). */
  readonly withDiary: number;
  /** Normal quantiles at 2.5, 10 and 90 %: the words at the usual rate of false flags. */
  readonly wellBelow: number;
  readonly below: number;
  readonly above: number;
};

export const usualReadinessSettings: ReadinessSettings = {
  squadWorth: 9,
  squadShare: 7 / 9,
  leastPast: 4,
  mostPast: 20,
  pastDays: 56,
  clip: 3.5,
  speedTrust: 0.75,
  jumpTrust: 0.65,
  tieWorth: 40,
  betweenItems: 0.35,
  speedWithJump: 0.4,
  withDiary: 0.2,
  wellBelow: -1.959964,
  below: -1.281552,
  above: 1.281552,
};

/** Usual SD between days of one athlete and the least it is taken to be. */
export const usualSpread: Readonly<
  Record<"speed" | "jump" | ReadinessItem, { readonly sd: number; readonly least: number }>
> = {
  speed: { sd: 4.5, least: 1 },
  jump: { sd: 4, least: 1 },
  sleep: { sd: 0.9, least: 0.5 },
  "sleep quality": { sd: 0.7, least: 0.5 },
  soreness: { sd: 0.7, least: 0.5 },
  fatigue: { sd: 0.7, least: 0.5 },
  stress: { sd: 0.7, least: 0.5 },
  mood: { sd: 0.7, least: 0.5 },
};

/** Items of which more is worse. */
export const moreIsWorse: ReadonlySet<string> = new Set(["soreness", "fatigue", "stress"]);
