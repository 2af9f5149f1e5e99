/** A typed text as a value and the number format it brings. */
export type TypedValue = { readonly v: unknown; readonly z?: string };

type Parse = (text: string, options?: { readonly locale: string }) => TypedValue | null;
/** How the grid library reads texts: month before day and a decimal point, unless told a language. */
export type Parsers = {
  readonly parseDate: Parse;
  readonly parseTime: Parse;
  readonly parseNumber: Parse;
};

const wholeDay = /^\d{1,2}([/.-])\d{1,2}\1(?:\d{4}|\d{2})(?=\s|$)/;
const dayOfYear = /^\d{1,2}([/-])\d{1,2}$/;
const inThousands = /^\D*[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?[^\d,]*$/;

/**
 * What a text typed or pasted into a cell means in the reader's language: 12/05 is a day in May but
 * where months come first. A day that is none that way is read the other way round. A comma is a
 * decimal mark where the language has it so; elsewhere a text with one that parts no thousands stays
 * text, for the whole column to settle: 0,734 is not 734, and 12,5% not 125%.
 *
 * @param language as a browser names it, "en-GB"
 * @param year for days typed without one
 */
export function typedValue(
  text: string,
  { parseDate, parseTime, parseNumber }: Parsers,
  language: string = languageHere(),
  year: number = new Date().getFullYear(),
): TypedValue | null {
  const own = { locale: language };
  const bare = text.trim();
  const [, sign] = dayOfYear.exec(bare) ?? [];
  if (sign !== undefined) {
    const found = parseDate(`${bare}${sign}${year}`, own);
    if (found) return { ...found, z: (found.z ?? "").replace(/[/-]yyyy$/, "") };
  }
  const day = (wholeDay.test(bare) ? parseDate(text, own) : null) ?? parseDate(text);
  if (day) return day;
  const time = parseTime(text);
  if (time || !bare.includes(",")) return time ?? parseNumber(text);
  if (new Intl.NumberFormat(language).format(1.5).includes(",")) return parseNumber(text, own);
  return inThousands.test(bare) ? parseNumber(text) : null;
}

/** The browser's language; without a page, that of this program's own words. */
export function languageHere(): string {
  return typeof document === "undefined" ? "en-GB" : navigator.language;
}
