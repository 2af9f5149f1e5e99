/** International inch, cm, exact. */
const inchCm = 2.54;

export const cmFromInches = (inches: number): number => inches * inchCm;
export const inchesFromCm = (cm: number): number => cm / inchCm;
