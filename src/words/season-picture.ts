import type { Height, SeasonWeek } from "../coaching/season/season-weeks";

/** Dots of a Unicode Braille pattern (U+2800 + bits), one column for each half of a week. */
const earlyDot: Readonly<Record<Height, number>> = { above: 1, upper: 2, lower: 4, below: 0x40 };
const lateDot: Readonly<Record<Height, number>> = {
  above: 8,
  upper: 0x10,
  lower: 0x20,
  below: 0x80,
};

/**
 * A season as one sign a week: left dot the first half of the week, right dot the second, four
 * heights from above to below baseline. A missed session is a missing dot.
 */
export function seasonPicture(weeks: readonly SeasonWeek[]): string {
  return weeks
    .map(({ early, late }) => {
      const bits = (early ? earlyDot[early] : 0) + (late ? lateDot[late] : 0);
      return String.fromCharCode(0x2800 + bits);
    })
    .join("");
}

/** The same for a font without those signs: ¯ above, - inside, _ below one wobble, space for none. */
export function plainSeasonPicture(weeks: readonly SeasonWeek[]): string {
  return weeks
    .map(({ wobbles }) => {
      if (wobbles === null) return " ";
      return wobbles > 1 ? "¯" : wobbles < -1 ? "_" : "-";
    })
    .join("");
}
