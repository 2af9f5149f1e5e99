/** A speed as it is written, to a hundredth: means are rounded to it, so that paper, phone and formulas agree. */
export const hundredths = (speed: number) => Math.round(speed * 100 + 1e-9) / 100;

/** Speeds are read to a hundredth, so their differences are exact to a thousandth: what counts as equal, m/s. */
export const speedHair = 0.0005;
