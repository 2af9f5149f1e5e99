import { accept, type Outcome, refuse } from "../../outcome";

/** Mean squares of athletes × trials, and the six intraclass correlations by their 1979 names. */
export type Intraclass = {
  readonly between: number;
  readonly within: number;
  readonly trials: number;
  readonly error: number;
  readonly typicalError: number;
  /** One trial: athletes' trials unmatched, trials a sample, trials fixed. */
  readonly oneWay: number;
  readonly agreement: number;
  readonly consistency: number;
  /** The same for the mean of all trials. */
  readonly oneWayMean: number;
  readonly agreementMean: number;
  readonly consistencyMean: number;
};

/**
 * Intraclass correlations (Shrout & Fleiss 1979, Psychol Bull 86:420–428) with the typical error
 * √(error mean square) for several trials.
 *
 * @param rows one athlete a row, one trial a column
 * @returns Refuses `values-too-few` (fewer than two athletes or trials), `lengths-differ` (rows of
 * unequal length), `value-not-finite` (by place, row by row), `values-all-equal`.
 */
export function intraclass(rows: readonly (readonly number[])[]): Outcome<Intraclass> {
  const n = rows.length;
  const k = rows[0]?.length ?? 0;
  if (n < 2 || k < 2) return refuse("values-too-few", { found: Math.min(n, k), needed: 2 });
  const odd = rows.find((row) => row.length !== k);
  if (odd) return refuse("lengths-differ", { first: k, second: odd.length });
  const all = rows.flat();
  const bad = all.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0) return refuse("value-not-finite", { place: bad + 1 });
  const average = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const grand = average(all);
  const squares = (values: readonly number[], about: number) =>
    values.reduce((sum, value) => sum + (value - about) ** 2, 0);
  const total = squares(all, grand);
  if (total === 0) return refuse("values-all-equal", { found: all.length });
  const rowSquares = k * squares(rows.map(average), grand);
  const columns = Array.from({ length: k }, (_, j) => average(rows.map((row) => row[j]!)));
  const columnSquares = n * squares(columns, grand);
  const between = rowSquares / (n - 1);
  const within = (total - rowSquares) / (n * (k - 1));
  const trials = columnSquares / (k - 1);
  // Clamped: with trials that differ by a constant, rounding alone would leave a hair below 0.
  const error = Math.max(0, total - rowSquares - columnSquares) / ((n - 1) * (k - 1));
  return accept({
    between,
    within,
    trials,
    error,
    typicalError: Math.sqrt(error),
    oneWay: (between - within) / (between + (k - 1) * within),
    agreement: (between - error) / (between + (k - 1) * error + (k * (trials - error)) / n),
    consistency: (between - error) / (between + (k - 1) * error),
    oneWayMean: (between - within) / between,
    agreementMean: (between - error) / (between + (trials - error) / n),
    consistencyMean: (between - error) / between,
  });
}
