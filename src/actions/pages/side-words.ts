import { platesASide } from "../../coaching/blocks/plate-loading";
import { pageWords } from "../../words/pages";
import type { PrintableWeek } from "./printable-week";

/** Plates on each side of the bar, kg; null where there is no load, or these plates do not make it. */
export function sideOf(
  { plates }: Pick<PrintableWeek, "plates">,
  barKg: number,
  loadKg: number | null,
): readonly number[] | null {
  const side = loadKg === null ? null : platesASide(loadKg, barKg, plates);
  return side?.ok ? side.value : null;
}

/** "20 + 10", as `said` puts it; "empty bar"; that the bar weighs more; "" when these plates do not make the load. */
export function sideWords(
  week: Pick<PrintableWeek, "plates" | "numbers">,
  barKg: number,
  loadKg: number,
  said = (plates: string) => plates,
): string {
  const side = sideOf(week, barKg, loadKg);
  if (side === null) return loadKg < barKg ? pageWords.underBar : "";
  return side.length === 0 ? pageWords.emptyBar : said(side.map(week.numbers.mass).join(" + "));
}
