import type { MeasureKind } from "./season-hold";

/**
 * Percent by which the value itself differs, from one of which more is better: a contact time counts
 * the other way round and on a log scale, so that 9 under is a contact 9.4 % longer.
 */
export function ownPercent(kind: MeasureKind | undefined, percent: number): number {
  return kind === "contact time" ? 100 * (Math.exp(-percent / 100) - 1) : percent;
}
