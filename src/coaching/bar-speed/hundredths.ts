/** A speed as it is written, to a hundredth: means are rounded to it, so that paper, phone and formulas agree. */
export const hundredths = (speed: number) => Math.round(speed * 100 + 1e-9) / 100;
