import { certain } from "../outcome";
import { normalQuantile, studentQuantile } from "./distributions";

/**
 * Half the width of a two-sided interval in its standard errors: Student t with that share between −t
 * and t.
 *
 * @param percent inside the interval, above 0 and below 100
 * @param degrees of freedom, above 0 and finite
 */
export function studentLimit(percent: number, degrees: number): number {
  const asked = `${percent} ${degrees}`;
  const known = limits.get(asked);
  if (known !== undefined) return known;
  const limit = certain(studentQuantile(0.5 + percent / 200, degrees));
  if (limits.size >= mostRemembered) limits.clear();
  limits.set(asked, limit);
  return limit;
}

// A squad's athletes share a few numbers of sets and sessions, and a quantile is found step by step.
const limits = new Map<string, number>();
const mostRemembered = 1000;

/** Standard normal deviate with a share of it below; the share above 0 and below 1. */
export function normalDeviate(share: number): number {
  return certain(normalQuantile(share));
}
