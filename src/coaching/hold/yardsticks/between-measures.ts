import type { MeasureKind } from "../season-hold";

/**
 * Correlation of two measures of one session in simulated seasons, their days off included, and how
 * many pairs of a squad's own rows it is worth.
 */
const usual = 0.43;
const usualWorth = 60;
const most = 0.9;

/**
 * How far a squad's measures of one session err together, pooled over athletes and pairs of measures and
 * steadied by the usual correlation. Differences of successive sessions are read, which a lasting
 * change touches once (after von Neumann 1941), in typical errors:
 * (Σ ΔxΔy + 60·2·0.43) / (Σ (Δx² + Δy²)/2 + 60·2).
 *
 * A squad whose measures err apart has more to learn from a session that is down in all of them, one
 * whose measures err together less.
 *
 * @param seasons values by measure and session, percent, NaN where missing
 * @param errorOf the squad's typical error, percent
 */
export function betweenMeasures(
  seasons: readonly {
    readonly measures: readonly { readonly kind: MeasureKind }[];
    readonly values: readonly (readonly number[])[];
  }[],
  errorOf: (kind: MeasureKind) => number,
): number {
  let products = 2 * usualWorth * usual;
  let squares = 2 * usualWorth;
  for (const { measures, values } of seasons) {
    for (let a = 0; a < measures.length; a++) {
      for (let b = a + 1; b < measures.length; b++) {
        const [errorA, errorB] = [errorOf(measures[a]!.kind), errorOf(measures[b]!.kind)];
        let last = -1;
        for (let s = 0; s < values[a]!.length; s++) {
          if (Number.isNaN(values[a]![s]!) || Number.isNaN(values[b]![s]!)) continue;
          if (last >= 0) {
            const x = (values[a]![s]! - values[a]![last]!) / errorA;
            const y = (values[b]![s]! - values[b]![last]!) / errorB;
            products += x * y;
            squares += (x * x + y * y) / 2;
          }
          last = s;
        }
      }
    }
  }
  return Math.min(most, Math.max(0, products / squares));
}
