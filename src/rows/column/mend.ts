/**
 * The one shift of the decimal point that brings a value among the column's other values, give or
 * take a third; null when none or several do.
 */
export function mendDecimalPoint(value: number, least: number, most: number): number | null {
  if (!(least <= most)) return null;
  const fits = [10, 100, 1000, 0.1, 0.01]
    .map((shift) => Number((value / shift).toPrecision(12)))
    .filter((mended) => mended >= least * 0.67 && mended <= most * 1.33);
  return fits.length === 1 ? (fits[0] as number) : null;
}
