import { accept, type Outcome } from "../../outcome";
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

  const single = (ratio: number, lower: number): Outcome<Limits> => {
    const down = varianceRatioQuantile(share, n - 1, lower);
    if (!down.ok) return down;
    const up = varianceRatioQuantile(share, lower, n - 1);
    if (!up.ok) return up;
    const of = (one: number) => (one - 1) / (one + k - 1);
    return accept({ low: of(ratio / down.value), high: of(ratio * up.value) });
  };
  const oneWay = single(between / within, n * (k - 1));
  if (!oneWay.ok) return oneWay;
  const consistency = single(between / error, (n - 1) * (k - 1));
  if (!consistency.ok) return consistency;

  const ratio = trials / error;
  const spare = n * (1 + (k - 1) * r) - k * r;
  const degrees =
    ((k - 1) * (n - 1) * (k * r * ratio + spare) ** 2) /
    ((n - 1) * k ** 2 * r ** 2 * ratio ** 2 + spare ** 2);
  const down = varianceRatioQuantile(share, n - 1, degrees);
  if (!down.ok) return down;
  const up = varianceRatioQuantile(share, degrees, n - 1);
  if (!up.ok) return up;
  const rest = k * trials + (k * n - k - n) * error;
  return accept({
    oneWay: oneWay.value,
    consistency: consistency.value,
    agreement: {
      low: (n * (between - down.value * error)) / (down.value * rest + n * between),
      high: (n * (up.value * between - error)) / (rest + n * up.value * between),
    },
  });
}
