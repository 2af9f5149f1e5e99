import { refuse } from "../../../outcome";
import { limits } from "../limits";
import { largestTab } from "./largest-tab";
import { attribute, partText, sheetPaths } from "./xml-text";
import type { Parts } from "./zip-parts";

const ends = /^\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/;

const columnNumber = (letters: string) =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

/** Cells of a range as a file writes it; infinity for one that cannot be. */
function cellsIn(range: string): number {
  const [, left, top, right = left, bottom = top] = ends.exec(range) ?? [];
  if (left === undefined) return Number.POSITIVE_INFINITY;
  const [width, height] = [columnNumber(right!) - columnNumber(left), Number(bottom) - Number(top)];
  return (Math.abs(width) + 1) * (Math.abs(height) + 1);
}

const setAsideWhole = ["definedName", "definedNames", "dataValidation", "dataValidations"];

/** Elements taken out as text end before the next of their name begins: one never closed would be looked for from each opening. */
function isPaired(text: string): boolean {
  return setAsideWhole.every((name) => {
    let open = false;
    for (const [tag] of text.matchAll(new RegExp(`<(/?)${name}(?=[\\s/>])[^<>]*>`, "g"))) {
      if (tag.endsWith("/>")) continue;
      if (open !== tag.startsWith("</")) return false;
      open = !open;
    }
    return !open;
  });
}

/**
 * What a file asks the library to lay out cell by cell, before the library is asked: a few letters can
 * name a billion cells. Entities are not unfolded either: no workbook needs a document type.
 *
 * @returns the refusal `not-xlsx`, `too-many-rows`, `too-many-columns` or `merges-too-much`; null when
 * there is none
 */
export function asksTooMuch(parts: Parts): ReturnType<typeof refuse> | null {
  for (const path of parts.keys()) {
    if (/\.(xml|rels)$/i.test(path) && partText(parts, path).includes("<!DOCTYPE"))
      return refuse("not-xlsx");
  }
  if (!isPaired(partText(parts, "xl/workbook.xml"))) return refuse("not-xlsx");
  for (const [tab, path] of sheetPaths(parts)) {
    const text = partText(parts, path);
    if (!isPaired(text)) return refuse("not-xlsx");
    let merged = 0;
    for (const [tag] of text.matchAll(/<mergeCell\b[^<>]*>/g))
      merged += cellsIn(attribute(tag, "ref") ?? "");
    if (merged > limits.rows) return refuse("merges-too-much", { tab, most: limits.rows });
    for (const [tag] of text.matchAll(/<row\b[^<>]*>/g)) {
      const row = Number(attribute(tag, "r") ?? 1);
      if (!(row >= 1 && row <= largestTab.rows))
        return refuse("too-many-rows", { tab, rows: row, most: limits.rows });
    }
    for (const [tag] of text.matchAll(/<col\b[^<>]*>/g)) {
      const columns = Number(attribute(tag, "max") ?? 1);
      if (!(columns >= 1 && columns <= largestTab.columns))
        return refuse("too-many-columns", { tab, columns, most: limits.columns });
    }
  }
  return null;
}
