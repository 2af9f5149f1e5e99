import { accept, type Outcome, refuse } from "../../src/outcome";
import { usable } from "../../src/statistics/usable";
import { normalTwoSided } from "./normal-two-sided";

/** S = rises less falls over all pairs, its variance, z with a continuity step, two-sided p. */
export type MannKendall = {
  readonly s: number;
  readonly variance: number;
  readonly z: number;
  readonly p: number;
};

/**
 * Mann–Kendall test for a trend in values in order of time (Mann 1945; Kendall 1975), variance
 * lessened for ties. Refuses `value-not-finite`, `values-too-few` below four, `values-all-equal`.
 */
export function mannKendall(values: readonly number[]): Outcome<MannKendall> {
  const given = usable(values, 4);
  if (!given.ok) return given;
  const n = values.length;
  let s = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) s += Math.sign(values[j]! - values[i]!);
  }
  const tied = new Map<number, number>();
  for (const value of values) tied.set(value, (tied.get(value) ?? 0) + 1);
  let eighteenths = n * (n - 1) * (2 * n + 5);
  for (const t of tied.values()) eighteenths -= t * (t - 1) * (2 * t + 5);
  if (eighteenths === 0) return refuse("values-all-equal", { found: n });
  const variance = eighteenths / 18;
  const z = (s - Math.sign(s)) / Math.sqrt(variance);
  return accept({ s, variance, z, p: normalTwoSided(z) });
}
