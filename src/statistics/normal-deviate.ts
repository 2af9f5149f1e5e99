import { probit } from "simple-statistics";

/**
 * Standard normal deviate with a share of it below, within .0002 of that share from .005 to .995. It
 * stands beside the library's exact quantile where the add-on's script must stay small.
 *
 * @param share above 0 and below 1
 */
export function normalDeviate(share: number): number {
  return probit(share);
}
