import { type Day, dayFromDate } from "../../coaching/calendar/day";
import { nearYear } from "../column/near-year";
import { spanFromText } from "./day-span";
import { type DayText, dayFromText } from "./day-text";

/** "From 1 June" alone begins something; with one of the second it has an end, too. */
const begins = /(?<!\p{L})(?:from|since|starting|ab|seit)(?!\p{L})/iu;
const ends = /(?<!\p{L})(?:until|till?|til|to|back|bis|zurück)(?!\p{L})|\d\.?\s*[-–—]\s*\d/iu;
const mostWords = 60;

/**
 * The last day that words name, "out until 12 June": one without a year lies nearest to `asOf`, and of two
 * readings of "12/6" the later is taken; null when they name none, or only a first.
 */
export function lastDaySaid(text: string, asOf: Day): Day | null {
  if (!/\d/.test(text) || (begins.test(text) && !ends.test(text))) return null;
  const words = text
    .split(/[\s,;()]+/)
    .filter(Boolean)
    .slice(0, mostWords);
  const days = words.flatMap((_, at) =>
    [1, 2, 3, 4, 5].flatMap((count) => {
      const part = words.slice(at, at + count).join(" ");
      return settled(spanFromText(part)?.[1] ?? dayFromText(part), asOf);
    }),
  );
  if (days.length > 0) return Math.max(...days);
  const years = words.flatMap((one) => (/^20\d\d[.:]?$/.test(one) ? [parseInt(one, 10)] : []));
  return years.length === 0 ? null : dayFromDate(Math.max(...years), 12, 31);
}

/** The days one may be, day first or month first. */
function settled(text: DayText | null, asOf: Day): Day[] {
  if (text === null) return [];
  const { pair, dotted } = text;
  const orders = pair === null || dotted ? [pair] : [pair, [pair[1], pair[0]] as const];
  return orders.flatMap((order) => {
    const [date, month] = order ?? [text.date!, text.month!];
    const year = text.year ?? nearYear({ ...text, pair: null, date, month }, asOf, null)!;
    const day = dayFromDate(year, month, date);
    return day === null ? [] : [day];
  });
}
