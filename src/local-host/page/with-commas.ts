/** Texts and tab names in their quotes, and what stands between them. */
const parts = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[^"']+/g;

/**
 * A formula typed as in a spreadsheet of decimal commas, "=LOAD_DROP(80;0,6;0,7;2,5)", as the grid takes
 * it; the online sheet takes both. In braces a semicolon parts rows: such a formula stays.
 */
export function withCommas(formula: string): string {
  const bare = formula.replace(parts, (part) => (/^["']/.test(part) ? "" : part));
  if (!bare.includes(";") || bare.includes("{")) return formula;
  return formula.replace(parts, (part) =>
    /^["']/.test(part) ? part : part.replace(/(?<=\d),(?=\d)/g, ".").replaceAll(";", ","),
  );
}
