import { strToU8 } from "fflate";
import { relationsOf, relationsPath } from "./relations";
import { attribute, partText, sheetPaths, withAttributes } from "./xml-text";
import type { Parts } from "./zip-parts";

/** Beyond the numbers any other part has. */
const firstNumber = 10_001;

/**
 * A file's parts with notes where the library looks for them. Programs may keep them anywhere in the
 * file (ECMA-376 part 2, 9.3); the library finds only those at the usual names.
 */
export function withUsualPlaces(parts: Parts): Parts {
  const moved = new Map(parts);
  [...sheetPaths(parts).values()].forEach((path, at) => {
    const usual = new Map([
      ["comments", `xl/comments${firstNumber + at}.xml`],
      ["vmlDrawing", `xl/drawings/vmlDrawing${firstNumber + at}.vml`],
    ]);
    const relations = relationsOf(parts, path);
    if (!relations.some(({ kind }) => kind === "comments")) return;
    const text = partText(parts, relationsPath(path)).replace(/<Relationship\b[^<>]*>/g, (tag) => {
      const relation = relations.find(({ id }) => id === attribute(tag, "Id"));
      const place = relation && usual.get(relation.kind);
      const part = relation?.path ? parts.get(relation.path) : undefined;
      if (!place) return tag;
      if (!part) return "";
      moved.delete(relation.path!);
      moved.set(place, part);
      return withAttributes(tag, { Target: place.replace("xl/", "../") });
    });
    moved.set(relationsPath(path), strToU8(text));
  });
  return moved;
}
