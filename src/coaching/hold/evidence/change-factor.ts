import type { HoldSettings } from "../hold-settings";

/**
 * Bayes factor for a change against none, from the change seen and its variance. Two kinds of change
 * are looked for: of normal size about zero, and, with `stepShare`, of about `stepSize` either way.
 * A prior that leaves the neighbourhood of zero out tells a change that matters from chance sooner
 * (Johnson & Rossell 2010).
 *
 * @param change difference of the means after and before, typical errors
 * @param nominal its variance
 */
export function changeFactor(change: number, nominal: number, settings: HoldSettings): number {
  const { changeSd, stepShare, stepSize, stepSd, varianceShare } = settings;
  const variance = varianceShare * nominal;
  const around = variance + changeSd ** 2;
  const anySize =
    Math.sqrt(variance / around) *
    Math.exp((change ** 2 * changeSd ** 2) / (2 * variance * around));
  const about = variance + stepSd ** 2;
  // Half of the steps lie on the other side, where this change does not count for them.
  const step =
    0.5 *
    Math.sqrt(variance / about) *
    Math.exp(change ** 2 / (2 * variance) - (Math.abs(change) - stepSize) ** 2 / (2 * about));
  return stepShare * step + (1 - stepShare) * anySize;
}
