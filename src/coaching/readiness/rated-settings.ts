import { normalDeviate } from "../../statistics/limits";
import { type ReadinessSettings, usualReadinessSettings } from "./readiness-settings";

/** Of the ordinary days called below usual, the share called well below usual. */
const wellBelowShare = 1 / 4;

/**
 * The day against usual at the coach's chosen rate: that share of ordinary days lies below usual by
 * chance, as many above, and a quarter of it well below.
 *
 * @param rate share of ordinary days, above 0 and below 1
 */
export function readinessSettingsAt(rate: number): ReadinessSettings {
  const below = normalDeviate(rate);
  return {
    ...usualReadinessSettings,
    below,
    above: -below,
    wellBelow: normalDeviate(rate * wellBelowShare),
  };
}
