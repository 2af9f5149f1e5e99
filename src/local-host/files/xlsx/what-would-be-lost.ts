import { partText, sheetPaths } from "./xml-text";
import type { Parts } from "./zip-parts";

/** Parts that come through a save whole. */
const kept =
  /^(\[Content_Types\]\.xml|_rels\/\.rels|docProps\/(core|app|custom|thumbnail)\.\w+|xl\/(workbook|sharedStrings|styles|calcChain)\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/theme\/[^/]+|xl\/worksheets\/[^/]+\.xml|xl\/worksheets\/_rels\/[^/]+|xl\/comments\d*\.xml|xl\/comments\/[^/]+|xl\/tables\/[^/]+|xl\/media\/[^/]+|xl\/drawings\/(_rels\/)?[^/]+|xl\/printerSettings\/[^/]+|xl\/persons\/[^/]+)$/;

/** What the others are, in a coach's words; the first that fits. */
const partNames: readonly (readonly [RegExp, string])[] = [
  [/^xl\/charts|^xl\/chartsheets/, "a chart"],
  [/^xl\/pivot/, "a pivot table"],
  [/vbaProject|^xl\/macrosheets/, "macros"],
  [/^xl\/external/, "links to other workbooks"],
  [/^xl\/threadedComments/, "comment threads"],
  [/^xl\/slicer|^xl\/timeline/, "slicers"],
  [/^xl\/ctrlProps|^xl\/activeX|^xl\/embeddings/, "form controls or embedded objects"],
  [/^xl\/metadata|^xl\/richData/, "formulas or pictures of a newer kind"],
  [/^xl\/(connections|queryTables|model)/, "links to outside data"],
  [/^customXml|^docMetadata/, "document properties of its own"],
];

/** What stands in a tab's own text that the library drops. */
const inSheet: readonly (readonly [RegExp, string])[] = [
  [/<x14:sparkline/, "sparklines"],
  [/<x14:dataValidation\b/, "lists that look into another tab"],
  [/<scenario\b/, "scenarios"],
  [/<customSheetView\b/, "custom views"],
  [/<legacyDrawingHF\b/, "pictures in the head or foot of the printed page"],
  [
    /<cfRule\b[^<>]*\stype="(?:beginsWith|endsWith|notContainsText|duplicateValues|uniqueValues)"/,
    "conditional formats of another kind",
  ],
  [/<cfRule\b[^<>]*\sstopIfTrue="(?:1|true)"/, "conditional formats that stop the ones below"],
  [/<x14:cfRule\b[^<>]*\stype="(?!dataBar|iconSet)/, "conditional formats of a newer kind"],
  [/<f\b[^<>]*\st="dataTable"/, "a data table"],
];

/**
 * Names what a save would lose, in words; empty when everything is kept. The library writes what it
 * understood of a file, so anything else must be known before, and the save refused.
 */
export function whatWouldBeLost(parts: Parts): readonly string[] {
  const lost = new Set<string>();
  for (const path of parts.keys()) {
    if (path.endsWith("/") || kept.test(path)) continue;
    lost.add(partNames.find(([pattern]) => pattern.test(path))?.[1] ?? `a part named ${path}`);
  }
  for (const path of sheetPaths(parts).values()) {
    const text = partText(parts, path);
    for (const [pattern, words] of inSheet) if (pattern.test(text)) lost.add(words);
  }
  for (const path of parts.keys()) {
    if (!/^xl\/drawings\/[^/]+\.xml$/.test(path)) continue;
    if (/<xdr:(sp|cxnSp|grpSp)\b/.test(partText(parts, path))) lost.add("drawn shapes");
  }
  if (
    /<(?:workbookProtection|fileSharing)\s[^<>]*(?:="1"|="true"|[Pp]assword|hashValue)/.test(
      partText(parts, "xl/workbook.xml"),
    )
  ) {
    lost.add("a protection of the workbook");
  }
  return [...lost];
}
