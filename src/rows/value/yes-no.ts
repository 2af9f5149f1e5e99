const yes = new Set(
  "y yes yep yeah j ja ok okay good gut fine true wahr t 1 ✓ ✔ ☑ ✅ √ + sauber clean 👍".split(" "),
);
const no = new Set(
  "n no nope nein bad poor schlecht false falsch f 0 ✗ ✘ ☒ ❌ ☐ unsauber 👎".split(" "),
);

/** Yes, no, or null when the words say neither. A lone "x" says neither: tick and cross both look so. */
export function yesNo(cell: unknown): boolean | null {
  if (typeof cell === "boolean") return cell;
  if (cell === 1 || cell === 0) return cell === 1;
  if (typeof cell !== "string") return null;
  const word = cell.trim().toLowerCase().replace(/[.!]$/, "");
  if (yes.has(word)) return true;
  return no.has(word) ? false : null;
}
