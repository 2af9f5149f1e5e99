import { studentLimit } from "../../statistics/student-series";
import { usualLineSettings } from "./line-settings";

/**
 * Student t, 12 degrees of freedom, 0.95 quantile, by the expansion of Abramowitz & Stegun 1964,
 * 26.7.5, up to its third power (exactly 1.782288).
 */
const usualLimit = 1.7822662297;

/**
 * Half the width of a 90 % interval in standard errors: Student t, for day and set SDs that are
 * themselves only known to so many degrees of freedom.
 */
export function limitOfNineInTen(freedom: number): number {
  return freedom > 0 && freedom !== usualLineSettings.spreadFreedom
    ? studentLimit(90, freedom)
    : usualLimit;
}
