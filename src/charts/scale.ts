/** A straight scale from values to pixels. */
export type Scale = (value: number) => number;

export function scale(from: number, to: number, start: number, end: number): Scale {
  const span = to - from || 1;
  return (value) => start + ((value - from) / span) * (end - start);
}

/** Round values from `low` to `high`, at most `most` of them. */
export function ticks(low: number, high: number, most: number): number[] {
  const rough = (high - low) / Math.max(1, most - 1);
  const power = 10 ** Math.floor(Math.log10(rough || 1));
  const step = [1, 2, 2.5, 5, 10].map((m) => m * power).find((one) => one >= rough) ?? power;
  const values: number[] = [];
  for (let v = Math.ceil(low / step) * step; v <= high + step / 1e6; v += step) {
    values.push(Number(v.toFixed(6)));
  }
  return values;
}

/** Pixels with one decimal: a picture's text stays short. */
export function at(value: number): number {
  return Math.round(value * 10) / 10;
}
