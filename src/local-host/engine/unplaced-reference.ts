const quotedText = /"(?:[^"]|"")*"/g;
const withTab =
  /(?:'(?:[^']|'')*'|[\p{L}_][\p{L}\p{N}_.]*)!\$?[A-Z]{0,3}\$?\d*(?::\$?[A-Z]{0,3}\$?\d*)?/giu;
const bare =
  /(?<![\p{L}\p{N}_.$])(?:\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{0,7})?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3})(?![\p{L}\p{N}_.(!])/iu;

/** The first cell or range of a formula that names no tab, null when all do. */
export function unplacedReference(formula: string): string | null {
  const rest = formula.replace(quotedText, '""').replace(withTab, "0");
  return bare.exec(rest)?.[0] ?? null;
}
