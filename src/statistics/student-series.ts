/** Standard normal quantiles of the limits in use: 80 %, 90 % and 95 % intervals. */
export const normalLimit = { 80: 1.281552, 90: 1.644854, 95: 1.959964 } as const;

/**
 * Student t limit of a two-sided 80 %, 90 % or 95 % interval by its series in 1/degrees (Abramowitz & Stegun
 * 1964, 26.7.5; from memory): within 0.01 of the tables from 4 degrees on, 0.001 from 8 on. It stands
 * beside the library's exact quantile where the add-on's script must stay small. Infinite degrees
 * give the normal limit.
 */
export function studentLimit(percent: keyof typeof normalLimit, degrees: number): number {
  const z = normalLimit[percent];
  const g1 = (z ** 3 + z) / 4;
  const g2 = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const g3 = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  const g4 = (79 * z ** 9 + 776 * z ** 7 + 1482 * z ** 5 - 1920 * z ** 3 - 945 * z) / 92160;
  return z + g1 / degrees + g2 / degrees ** 2 + g3 / degrees ** 3 + g4 / degrees ** 4;
}
