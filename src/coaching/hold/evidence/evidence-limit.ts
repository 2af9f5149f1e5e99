/**
 * Evidence at which a change is named. Ville's inequality (1939) would promise a false-flag rate of
 * at most 1 in limit; this limit is calibrated instead, by simulated calm seasons with off-days, to
 * flag the share of them that the coach chose: (1.95 − 3.5/n)·(0.1/rate)^0.6.
 *
 * @param rate share of calm seasons with a false flag, 0.02 to 0.33, for one athlete
 * @param plannedAfter sessions planned after the baseline, 8 to 40
 */
export function evidenceLimit(rate: number, plannedAfter: number): number {
  return (1.95 - 3.5 / plannedAfter) * (0.1 / rate) ** 0.6;
}
