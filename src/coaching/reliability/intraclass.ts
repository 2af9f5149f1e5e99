import { accept, type Outcome, refuse } from "../../outcome";

/** Mean squares of athletes × trials, and the six intraclass correlations by their 1979 names. */
export type Intraclass = {
  readonly between: number;
  readonly within: number;
  readonly trials: number;
  readonly error: number;
  /** One trial: athletes' trials unmatched, trials a sample, trials fixed. */
  readonly oneWay: number;
  readonly agreement: number;
  readonly consistency: number;
  /** The same for the mean of all trials. */
  readonly oneWayMean: number;
  readonly agreementMean: number;
  readonly consistencyMean: number;
};

/** Share of a value that summing in doubles may leave where there is no error. */
const leftByRounding = 1e-12;

/**
 * Intraclass correlations (Shrout & Fleiss 1979, Psychol Bull 86:420–428) of several trials, in the
 * trials' unit squared and as fractions.
 *
 * @param rows one athlete a row, one trial a column
 * @returns Refuses `trials-too-few` (fewer than two athletes or trials), `lengths-differ` (rows of
 * unequal length), `value-not-finite` (by place, row by row), `values-all-equal`.
 */
export function intraclass(rows: readonly (readonly number[])[]): Outcome<Intraclass> {
  const n = rows.length;
  const k = rows[0]?.length ?? 0;
  if (n < 2 || k < 2) return refuse("trials-too-few", { athletes: n, trials: k });
  const odd = rows.find((row) => row.length !== k);
  if (odd) return refuse("lengths-differ", { first: k, second: odd.length });
  const all = rows.flat();
  const bad = all.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0) return refuse("value-not-finite", { place: bad + 1 });
  const average = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const grand = average(all);
  const squares = (values: readonly number[], about: number) =>
    values.reduce((sum, value) => sum + (value - about) ** 2, 0);
  if (all.every((value) => value === all[0]))
    return refuse("values-all-equal", { found: all.length });
  const rowMeans = rows.map(average);
  const trialMeans = Array.from({ length: k }, (_, j) => average(rows.map((row) => row[j]!)));
  const rest = rows.flatMap((row, i) =>
    row.map((value, j) => value - rowMeans[i]! - (trialMeans[j]! - grand)),
  );
  const between = (k * squares(rowMeans, grand)) / (n - 1);
  const trials = (n * squares(trialMeans, grand)) / (k - 1);
  const hair = leftByRounding * Math.max(...all.map(Math.abs));
  const none = rest.every((off) => Math.abs(off) <= hair);
  const error = none ? 0 : squares(rest, 0) / ((n - 1) * (k - 1));
  const within = (trials + error * (n - 1)) / n;
  return accept({
    between,
    within,
    trials,
    error,
    oneWay: (between - within) / (between + (k - 1) * within),
    agreement: (between - error) / (between + (k - 1) * error + (k * (trials - error)) / n),
    consistency: (between - error) / (between + (k - 1) * error),
    oneWayMean: (between - within) / between,
    agreementMean: (between - error) / (between + (trials - error) / n),
    consistencyMean: (between - error) / between,
  });
}
