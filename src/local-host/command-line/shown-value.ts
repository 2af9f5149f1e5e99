import { percentWords, signedPercentWords } from "../../words/reasons-figures";
import { isDate } from "../spreadsheet-date";

/** A cell's value in JSON: dates as ISO text, everything else as it is. */
export function plainValue(value: unknown): unknown {
  return isDate(value) ? isoText(value) : value;
}

/** A cell's value on the screen: numbers to four figures, dates as ISO text. */
export function shownValue(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (isDate(value)) return isoText(value);
  if (typeof value !== "number") return oneLine(String(value));
  return String(Number(value.toPrecision(Math.abs(value) >= 1000 ? 6 : 4))).replace("-", "−");
}

/** A share on the screen as every sentence says it: "−8 %", "+0.3 %". */
export function shownShare(value: unknown, signed: boolean): string {
  if (typeof value !== "number") return shownValue(value);
  return (signed ? signedPercentWords : percentWords)(100 * value);
}

/** A cell's text must not move the terminal's cursor or break its table. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}]+/gu, " ");
}

function isoText(date: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  const time = `${two(date.getHours())}:${two(date.getMinutes())}`;
  return time === "00:00" ? day : `${day} ${time}`;
}
