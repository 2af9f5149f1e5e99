import { accept, certain, type Outcome } from "../../outcome";
import { varianceRatioQuantile } from "../../statistics/distributions";
import { intraclass } from "./intraclass";

export type Limits = { readonly low: number; readonly high: number };

/** 95 % limits of the three single-trial intraclass correlations. */
export type IntraclassLimits = {
  readonly oneWay: Limits;
  readonly agreement: Limits;
  readonly consistency: Limits;
};

const share = 0.975;

/**
 * Limits by the F distribution (Shrout & Fleiss 1979, Psychol Bull 86:424–426); those of agreement
 * with Satterthwaite's degrees of freedom.
 *
 * @param rows one athlete a row, one trial a column
 * @returns Refuses as `intraclass`.
 */
export function intraclassLimits(rows: readonly (readonly number[])[]): Outcome<IntraclassLimits> {
  const figures = intraclass(rows);
  if (!figures.ok) return figures;
  const n = rows.length;
  const k = rows[0]!.length;
  const { between, within, trials, error, agreement: r } = figures.value;

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
  const down = varianceRatioQuantile(share, n - 1, degrees);
  if (!down.ok) return down;
  const up = certain(varianceRatioQuantile(share, degrees, n - 1));
  const rest = k * trials + (k * n - k - n) * error;
  return accept({
    oneWay: single(between / within, n * (k - 1)),
    consistency: single(between / error, (n - 1) * (k - 1)),
    agreement: {
      low: (n * (between - down.value * error)) / (down.value * rest + n * between),
      high: (n * (up * between - error)) / (rest + n * up * between),
    },
  });
}
