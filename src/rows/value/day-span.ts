import { type DayText, dayFromText, weekdayOfWord } from "./day-text";

/** First and last day of a span as written; the last is null where it is left open. */
export type DaySpan = readonly [DayText, DayText | null];

const between = /\s*(?:[-–—/&+]|(?<!\p{L})(?:to|bis|until|till|through|and|und)(?!\p{L}))\s*/giu;
const longest = 40;

/**
 * Reads "12–14 June", "8.–21.6.2026", "27 June to 3 July", "20./21. Juni" as first and last day, and
 * "from 1 June" as a first; null when it is no span.
 */
export function spanFromText(written: string): DaySpan | null {
  if (written.length > longest || dayFromText(written) !== null) return null;
  const text = written.trim().replace(/^(?:from|since|ab|seit|vom?)\s+/i, "");
  const open = dayFromText(text);
  if (open !== null) return [open, null];
  for (const { 0: part, index } of text.matchAll(between)) {
    const last = dayFromText(text.slice(index + part.length));
    if (last === null) continue;
    const left = text.slice(0, index).trim();
    const first = dayFromText(left) ?? dateAlone(left, last);
    if (first === null) continue;
    // "27 Dec – 3 Jan 2027" begins in the year before.
    const early = first.year === null && monthOf(first) > monthOf(last) ? 1 : 0;
    const year = first.year ?? (last.year === null ? null : last.year - early);
    return [{ ...first, year }, last];
  }
  return null;
}

/** "12" or "Sat 27." before a day whose month is known to be one. */
function dateAlone(left: string, last: DayText): DayText | null {
  const parts = /^(?:(\p{L}+)[.,]?\s+)?(\d{1,2})(?:st|nd|rd|th|\.)?$/u.exec(left);
  if (parts === null || (last.pair !== null && !last.dotted)) return null;
  const weekday = parts[1] === undefined ? null : weekdayOfWord(parts[1]);
  if (parts[1] !== undefined && weekday === null) return null;
  const date = Number(parts[2]);
  return last.pair === null
    ? { ...last, date, weekday }
    : { ...last, pair: [date, last.pair[1]], weekday };
}

const monthOf = ({ month, pair }: DayText): number => month ?? pair![1];
