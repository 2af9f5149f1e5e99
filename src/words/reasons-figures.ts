/** A size as "8 %", one decimal under 2: "1.4 %". */
export function percentWords(percent: number): string {
  const size = Math.abs(percent);
  return `${size < 1.95 ? trimmed(size, 1) : Math.round(size)} %`;
}

/** A change with its sign: "−8 %", "+3 %", "0 %". */
export function signedPercentWords(percent: number): string {
  const size = percentWords(percent);
  if (size === "0 %") return size;
  return `${percent < 0 ? "−" : "+"}${size}`;
}

/**
 * A whole number, from five digits on in groups of three parted by a narrow space, as the SI Brochure
 * (9th edition, 5.4.4) does: a dot or comma would be a decimal mark to half of all coaches.
 */
export const grouped = (count: number): string =>
  count < 10_000 ? `${count}` : `${count}`.replace(/\B(?=(\d{3})+$)/g, "\u202f");

/** "1 session", "3 sessions" */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** Rounded to so many decimals, without trailing zeros, with a real minus sign. */
export function trimmed(value: number, decimals: number): string {
  const text = String(Number(Math.abs(value).toFixed(decimals)));
  return value < 0 && text !== "0" ? `−${text}` : text;
}

/** "1 repetition", "3.2 repetitions" */
export function repetitionsWords(count: number): string {
  const text = trimmed(count, 1);
  return `${text} repetition${text === "1" ? "" : "s"}`;
}

const capital = /(?<![\p{L}-])\p{Lu}(?=\p{Ll})/gu;

/** A lift or test within a sentence: "Back Squat" is "back squat", "CMJ mat" and "T-bar row" stay. */
export const withinSentence = (name: string): string =>
  name.trim().replace(capital, (first) => first.toLowerCase());

/** A line of text as a sentence of its own: a capital letter and a full stop. */
export function sentenceWords(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? "" : "."}`;
}
