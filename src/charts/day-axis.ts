import { shortMonth } from "../words/days";

/** "2026-05-12" as days since 1970. */
export function dayNumber(iso: string): number {
  const [year = 1970, month = 1, date = 1] = iso.split("-").map(Number);
  return Date.UTC(year, month - 1, date) / 86_400_000;
}

/** First days of months within two days, with the month's name. */
export function monthStarts(from: number, to: number): { day: number; name: string }[] {
  const starts: { day: number; name: string }[] = [];
  const first = new Date(from * 86_400_000);
  let year = first.getUTCFullYear();
  let month = first.getUTCMonth();
  for (;;) {
    const day = Date.UTC(year, month, 1) / 86_400_000;
    if (day > to) return starts;
    if (day >= from) starts.push({ day, name: shortMonth(month + 1) });
    month++;
    if (month === 12) {
      month = 0;
      year++;
    }
  }
}
