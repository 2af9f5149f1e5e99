/**
 * The one shift of the decimal point that brings a value among the column's other values, give or
 * take a third, and within what is plausible; null when none or several do.
 */
export function mendDecimalPoint(
  value: number,
  least: number,
  most: number,
  { low, high }: { readonly low: number; readonly high: number },
): number | null {
  if (!(least <= most)) return null;
  const from = Math.max(low, least * 0.67);
  const to = Math.min(high, most * 1.33);
  const fits = [10, 100, 1000, 0.1, 0.01]
    .map((shift) => Number((value / shift).toPrecision(12)))
    .filter((mended) => mended >= from && mended <= to);
  return fits.length === 1 ? (fits[0] as number) : null;
}
