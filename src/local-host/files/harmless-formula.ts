/**
 * Whether a formula from a CSV file may run. Anybody can put text into a CSV file that a spreadsheet
 * takes for a formula, so only the add-on's own functions, references, text and arithmetic do;
 * whatever reaches for files, links or other programs stays text.
 *
 * @param own names of the add-on's functions
 */
export function isHarmlessFormula(formula: string, own: ReadonlySet<string>): boolean {
  // A tab's name may hold anything in its quotes but a file's name in brackets.
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^'[\]|]|'')*'!/g, "Tab!");
  if (!/^=[\w\s$!:;.,()+\-*/^&<>="%]+$/.test(bare)) return false;
  const calls = [...bare.matchAll(/([A-Za-z_][\w.]*)\s*\(/g)].map(([, name]) => name!);
  return calls.every((name) => own.has(name.toUpperCase()));
}
