import { strToU8 } from "fflate";
import { columnNumber } from "../../a1";
import { slidFormula } from "./slid-formula";
import { attribute, escaped, partText, sheetPaths, unescaped } from "./xml-text";
import type { Parts } from "./zip-parts";

const cellWithFormula =
  /(<c\b[^<>]*\sr="([A-Z]{1,3})(\d+)"[^<>]*>\s*)(<f\b[^<>]*?(?:\/>|>[^<]*<\/f>))/g;

/**
 * Formulas filled down are written once in a file, and the other cells refer to that one. Here each
 * cell is given its own: whoever changed the first would change all, and the library slides what
 * looks like a reference within texts and tab names, too.
 */
export function withOwnFormulas(parts: Parts): Parts {
  const mended = new Map(parts);
  for (const path of sheetPaths(parts).values()) {
    const text = partText(parts, path);
    if (text.includes('t="shared"')) mended.set(path, strToU8(unshared(text)));
  }
  return mended;
}

type Shared = { readonly formula: string; readonly column: number; readonly row: number };

function unshared(text: string): string {
  const shared = new Map<string, Shared>();
  return text.replace(
    cellWithFormula,
    (all, cell: string, letters: string, row: string, f: string) => {
      const tag = f.slice(0, f.indexOf(">") + 1);
      const id = attribute(tag, "si");
      if (attribute(tag, "t") !== "shared" || id === null) return all;
      const at = { column: columnNumber(letters), row: Number(row) };
      const written = unescaped(/>([^<]*)<\/f>$/.exec(f)?.[1] ?? "");
      if (written !== "") {
        if (!shared.has(id)) shared.set(id, { formula: written, ...at });
        return `${cell}<f>${escaped(written)}</f>`;
      }
      const first = shared.get(id);
      if (!first) return all;
      const own = slidFormula(first.formula, at.row - first.row, at.column - first.column);
      return `${cell}<f>${escaped(own)}</f>`;
    },
  );
}
