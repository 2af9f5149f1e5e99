import { isDate } from "./is-date";

/**
 * Minutes after midnight from a time cell: a `Date` (the spreadsheet hands times over so), a
 * fraction of a day, "18:00", "6 pm", "18h30", "18.30 Uhr", "18:00 (local)". Null for anything else.
 */
export function minuteOfDay(cell: unknown): number | null {
  if (isDate(cell)) return cell.getHours() * 60 + cell.getMinutes();
  if (typeof cell === "number")
    return cell >= 0 && cell < 1 ? Math.round(cell * 1440) % 1440 : null;
  if (typeof cell !== "string") return null;
  const parts =
    /^(\d{1,2})(?:\s*[:.h]\s*(\d{2}))?(?::\d{2})?\s*(?:(am|pm|a\.m\.|p\.m\.)|h|uhr)?$/i.exec(
      cell.trim().replace(/\s*\([^()]*\)$/, ""),
    );
  if (parts === null) return null;
  const half = parts[3]?.toLowerCase().charAt(0);
  let hour = Number(parts[1]);
  const minute = Number(parts[2] ?? 0);
  // "18" alone says nothing about being a time.
  if (half === undefined && parts[2] === undefined && !/[hr]/i.test(cell)) return null;
  if (half !== undefined && (hour < 1 || hour > 12)) return null;
  if (half === "p" && hour < 12) hour += 12;
  if (half === "a" && hour === 12) hour = 0;
  return hour < 24 && minute < 60 ? hour * 60 + minute : null;
}
