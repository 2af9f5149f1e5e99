import type { HoldMeasure } from "./season-hold";

/**
 * Change of the value itself from baseline, fraction: a contact time that lengthened is above zero,
 * though it counts as a loss. Null without rows.
 */
export function valueChange({ kind, change, nowValue, baselineValue }: HoldMeasure): number | null {
  if (change === null || nowValue === null) return null;
  return kind === "contact time" ? nowValue / baselineValue - 1 : change / 100;
}
