import { accept, type Outcome, refuse } from "../outcome";

/**
 * The values, when all are finite and there are enough of them.
 * Refuses `values-too-few` and `value-not-finite` (by place, the first is 1).
 */
export function usable(values: readonly number[], needed: number): Outcome<readonly number[]> {
  for (const [index, value] of values.entries()) {
    if (!Number.isFinite(value)) return refuse("value-not-finite", { place: index + 1 });
  }
  return values.length < needed
    ? refuse("values-too-few", { found: values.length, needed })
    : accept(values);
}

/** As `usable` for two columns read side by side. Refuses `lengths-differ` too. */
export function usablePairs(
  x: readonly number[],
  y: readonly number[],
  needed: number,
): Outcome<null> {
  if (x.length !== y.length) return refuse("lengths-differ", { first: x.length, second: y.length });
  const xs = usable(x, needed);
  if (!xs.ok) return xs;
  const ys = usable(y, needed);
  return ys.ok ? accept(null) : ys;
}
