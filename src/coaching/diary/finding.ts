import type { ItemKind } from "./diary-item";
import type { ValueOfDay } from "./performance-day";

/**
 * What the days say about one item: it goes with performance beyond what chance and the number of
 * items looked at explain, no link is seen, it was the same every day, or there are too few days.
 */
export type FindingWord = "goes together" | "no link seen" | "always the same" | "not enough days";

/** One diary item against the performance of one athlete, or of several together. */
export type Finding = {
  /** Name, or "" for all athletes together. */
  readonly athlete: string;
  readonly athletes: number;
  readonly item: string;
  readonly kind: ItemKind;
  readonly unit: "h" | "points" | "load" | "yes";
  readonly word: FindingWord;
  /** Days with both a performance and the item, drift taken out of both. */
  readonly days: number;
  /** Days with the item (yes or no), or with it out of the athlete's ordinary (amount). */
  readonly daysWith: number;
  /** An amount's own border between ordinary and out of it, and on which side it lies. */
  readonly border: number | null;
  readonly side: "under" | "over" | null;
  /** The value that goes most closely with it; null for all values of the day together. */
  readonly value: Pick<ValueOfDay, "kind" | "of"> | null;
  /** Percent of performance with it against without, or per step; null for the last two words. */
  readonly difference: number | null;
  readonly step: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Permutation p-value, and the same held against all items looked at. */
  readonly p: number | null;
  readonly adjustedP: number | null;
  /** Items of the athlete that were looked at. */
  readonly itemsLookedAt: number;
  /** Slow days (or good ones, when it goes with better performance), and those that had it. */
  readonly oddIs: "slow" | "good";
  readonly oddDays: number;
  readonly oddDaysWith: number;
  readonly otherDays: number;
  readonly otherDaysWith: number;
  /** Days left out as the diary was written after the session. */
  readonly writtenAfter: number;
};

/** Days needed before anything is said, and with and without an item that was there or not. */
export const leastDays = 12;
export const leastWith = 4;
/**
 * A link is named when its adjusted p-value is no more than this: a little under 0.05, so that in
 * simulation seasons with one true link also name a false one beside it in 5 % at most.
 */
export const linkLimit = 0.04;
/** Slow and good days lie beyond this many wobbles: the borders of "below" and "above usual". */
export const oddSize = 1.281552;
/** Of several values one alone makes a day odd further out, for it is the oddest of them. */
export const oddAloneSize = 1.959964;
