import type { NumberStyle } from "../words/printed-numbers";

/** Parts of a formula: texts and tab names in their quotes, and what stands between them. */
const parts = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']+/g;

/**
 * How the spreadsheet's own language writes numbers and formulas: where a comma is the decimal mark,
 * semicolons part a formula's arguments, and a formula with commas is refused.
 */
export class SheetLanguage {
  private mark: NumberStyle["mark"] | undefined;

  /** @param locale the spreadsheet's, "de_DE"; asked for once, when the first formula comes */
  constructor(private readonly locale: () => string) {}

  decimalMark(): NumberStyle["mark"] {
    this.mark ??= decimalMarkOf(this.locale());
    return this.mark;
  }

  /** A formula with commas and decimal points, as the spreadsheet takes it. */
  written(formula: string): string {
    if (!/[,.]/.test(formula) || this.decimalMark() === ".") return formula;
    return between(formula, (part) => part.replaceAll(",", ";").replace(/(?<=\d)\.(?=\d)/g, ","));
  }

  /** A formula of the spreadsheet with commas and decimal points, however it was handed over. */
  plain(formula: string): string {
    if (!formula.includes(";") || this.decimalMark() === ".") return formula;
    return between(formula, (part) => part.replace(/(?<=\d),(?=\d)/g, ".").replaceAll(";", ","));
  }
}

function between(formula: string, change: (part: string) => string): string {
  return formula.replace(parts, (part) => (/^["']/.test(part) ? part : change(part)));
}

function decimalMarkOf(locale: string): NumberStyle["mark"] {
  const numbers = new Intl.NumberFormat(locale.replaceAll("_", "-"));
  return numbers.format(1.5).includes(",") ? "," : ".";
}
