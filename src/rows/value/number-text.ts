/** A number found in text, with what is doubtful about it. */
export type NumberText = {
  readonly value: number;
  /** The other reading when a single separator with three digits may group thousands. */
  readonly thousands: number | null;
  /** "0.58?" or "~85": the coach was not sure, so it is not used without asking. */
  readonly unsure: boolean;
};

const plain = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
const grouped = /^[+-]?\d{1,3}(?:([., '’])\d{3})(?:\1\d{3})*(?:(?!\1)[.,]\d+)?$/;
const lonelyGroup = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;

/** No number is longer; what is would take the patterns below the square of its length. */
const longest = 100;

/**
 * Reads a number with a decimal point or comma, with or without grouped thousands.
 * Null when the text is anything else ("0..70", "16/hand").
 */
export function numberFromText(text: string): NumberText | null {
  let bare = text
    .trim()
    .replace(/[−–]/g, "-")
    .replace(/[\u00a0\u2009\u202f]/g, " ");
  if (bare.length > longest) return null;
  const unsure = /[?~≈]|^(ca|circa|about|abt)\.? /i.test(bare);
  if (unsure)
    bare = bare
      .replace(/\s*\?+$/, "")
      .replace(/^[~≈]\s*/, "")
      .replace(/^[a-z]+\.? /i, "");
  if (plain.test(bare)) {
    const value = Number(bare.replace(",", "."));
    const thousands = lonelyGroup.test(bare) ? Number(bare.replace(/[.,]/, "")) : null;
    return { value, thousands, unsure };
  }
  const group = grouped.exec(bare);
  if (group === null) return null;
  const separator = group[1]!;
  const whole = bare.split(separator).join("").replace(",", ".");
  const value = Number(whole);
  return Number.isFinite(value) ? { value, thousands: null, unsure } : null;
}
