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
  return certain(studentQuantile(0.5 + percent / 200, degrees));
}

/** Standard normal deviate with a share of it below; the share above 0 and below 1. */
export function normalDeviate(share: number): number {
  return certain(normalQuantile(share));
}
