import { certain } from "../../outcome";
import { varianceRatioQuantile } from "../../statistics/distributions";
import type { Intraclass } from "./intraclass";

export type Limits = { readonly low: number; readonly high: number };

/** 95 % limits of the three single-trial intraclass correlations. */
export type IntraclassLimits = {
  readonly oneWay: Limits;
  /** null unless the correlation is above 0: the degrees of freedom rest on shares of variance. */
  readonly agreement: Limits | null;
  readonly consistency: Limits;
};

const share = 0.975;

/**
 * Limits by the F distribution (Shrout & Fleiss 1979, Psychol Bull 86:424–426); those of agreement
 * with Satterthwaite's degrees of freedom.
 *
 * @param figures of trials between which there is an error
 * @param n athletes, two or more
 * @param k trials, two or more
 */
export function intraclassLimits(figures: Intraclass, n: number, k: number): IntraclassLimits {
  const { between, within, trials, error, agreement: r } = figures;

  const single = (ratio: number, lower: number): Limits => {
    const down = certain(varianceRatioQuantile(share, n - 1, lower));
    const up = certain(varianceRatioQuantile(share, lower, n - 1));
    const of = (one: number) => (one - 1) / (one + k - 1);
    return { low: of(ratio / down), high: of(ratio * up) };
  };

  const ratio = trials / error;
  const spare = n * (1 + (k - 1) * r) - k * r;
  const degrees =
    ((k - 1) * (n - 1) * (k * r * ratio + spare) ** 2) /
    ((n - 1) * k ** 2 * r ** 2 * ratio ** 2 + spare ** 2);
  const ofAgreement = (): Limits => {
    const down = between / certain(varianceRatioQuantile(share, n - 1, degrees));
    const up = between * certain(varianceRatioQuantile(share, degrees, n - 1));
    const rest = k * trials + (k * n - k - n) * error;
    const of = (one: number) => (n * (one - error)) / (rest + n * one);
    return { low: of(down), high: of(up) };
  };
  return {
    oneWay: single(between / within, n * (k - 1)),
    consistency: single(between / error, (n - 1) * (k - 1)),
    agreement: r > 0 ? ofAgreement() : null,
  };
}
