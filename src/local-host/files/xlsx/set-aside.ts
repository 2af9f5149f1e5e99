import { strToU8 } from "fflate";
import { withOwnFormulas } from "./own-formulas";
import { handHeights, type RowHeights, withHandHeights } from "./row-heights";
import { attribute, escaped, partText, sheetPaths, unescaped } from "./xml-text";
import type { Parts } from "./zip-parts";

/** Names and lists of a file as they are written in it; the library would unroll them cell by cell. */
export type SetAside = {
  /** Each `<definedName>` with the tab it belongs to, null for the whole workbook. */
  readonly names: readonly { readonly xml: string; readonly tab: string | null }[];
  /** Each `<dataValidation>` of a tab, by the tab's name. */
  readonly validations: ReadonlyMap<string, readonly string[]>;
  /** Heights of a tab's rows that were set by hand, by the tab's name. */
  readonly heights: ReadonlyMap<string, RowHeights>;
};

const namesBlock = /<definedNames\b[^<>]*?(?:\/>|>[\s\S]*?<\/definedNames>)/;
const oneName = /<definedName\b[^<>]*?(?:\/>|>[\s\S]*?<\/definedName>)/g;
const listsBlock = /<dataValidations\b[^<>]*?(?:\/>|>[\s\S]*?<\/dataValidations>)/;
const oneList = /<dataValidation\b[^<>]*?(?:\/>|>[\s\S]*?<\/dataValidation>)/g;
/** What may follow the lists in a tab's part (ECMA-376 part 1, 18.3.1.99). */
const afterLists =
  /<(hyperlinks|printOptions|pageMargins|pageSetup|headerFooter|rowBreaks|colBreaks|customProperties|cellWatches|ignoredErrors|smartTags|drawing|legacyDrawing|legacyDrawingHF|picture|oleObjects|controls|webPublishItems|tableParts|extLst)\b|<\/worksheet>/;

/** Takes names and lists out of a file's parts. Print areas and titles stay: the library keeps them. */
export function setAside(parts: Parts): { readonly aside: SetAside; readonly rest: Parts } {
  const rest = new Map(withOwnFormulas(parts));
  const tabs = [...sheetPaths(parts).keys()];
  const workbook = partText(parts, "xl/workbook.xml");
  const block = namesBlock.exec(workbook)?.[0] ?? "";
  const names = [...block.matchAll(oneName)].map(([xml]) => xml);
  const builtIn = names.filter((xml) => /\sname="_xlnm\.Print_(?:Area|Titles)"/.test(xml));
  const back = builtIn.length > 0 ? `<definedNames>${builtIn.join("")}</definedNames>` : "";
  rest.set("xl/workbook.xml", strToU8(workbook.replace(namesBlock, () => back)));
  const validations = new Map<string, readonly string[]>();
  const heights = new Map<string, RowHeights>();
  for (const [tab, path] of sheetPaths(parts)) {
    const text = partText(rest, path);
    heights.set(tab, handHeights(text));
    const lists = listsBlock.exec(text)?.[0];
    if (lists === undefined) continue;
    validations.set(
      tab,
      [...lists.matchAll(oneList)].map(([xml]) => withoutForeignMarks(xml)),
    );
    rest.set(path, strToU8(text.replace(listsBlock, "")));
  }
  return {
    aside: {
      names: names
        .filter((xml) => !builtIn.includes(xml))
        .map((xml) => {
          const at = attribute(xml.slice(0, xml.indexOf(">") + 1), "localSheetId");
          return { xml, tab: at === null ? null : (tabs[Number(at)] ?? null) };
        }),
      validations,
      heights,
    },
    rest,
  };
}

/** Puts names and lists back into a file the library wrote. */
export function putBack(written: Parts, { names, validations, heights }: SetAside): Parts {
  const parts = new Map(written);
  const paths = sheetPaths(written);
  const tabs = [...paths.keys()];
  const lines = names.flatMap(({ xml, tab }) => {
    if (tab === null) return [xml];
    const at = tabs.indexOf(tab);
    return at < 0 ? [] : [xml.replace(/\slocalSheetId="\d+"/, ` localSheetId="${at}"`)];
  });
  if (lines.length > 0) {
    const workbook = partText(written, "xl/workbook.xml");
    const old = namesBlock.exec(workbook)?.[0] ?? "";
    const all = [...[...old.matchAll(oneName)].map(([xml]) => xml), ...lines].join("");
    const block = `<definedNames>${all}</definedNames>`;
    const text =
      old === ""
        ? workbook.replace("</sheets>", () => `</sheets>${block}`)
        : workbook.replace(namesBlock, () => block);
    parts.set("xl/workbook.xml", strToU8(text));
  }
  for (const [tab, lists] of validations) {
    const path = paths.get(tab);
    if (path === undefined || lists.length === 0) continue;
    const text = partText(written, path);
    // Only what follows the cells can come after the lists.
    const cellsEnd = Math.max(text.indexOf("</sheetData>"), text.indexOf("<sheetData/>"));
    const tail = text.slice(cellsEnd);
    const block = `<dataValidations count="${lists.length}">${lists.join("")}</dataValidations>`;
    const mended = tail.replace(afterLists, (found) => block + found);
    parts.set(path, strToU8(text.slice(0, cellsEnd) + mended));
  }
  for (const [tab, path] of paths) {
    const text = partText(parts, path);
    const mended = withHandHeights(text, heights.get(tab) ?? {});
    if (mended !== text) parts.set(path, strToU8(mended));
  }
  return parts;
}

/** Attributes of other programs' own namespaces: the tab's part they go back into does not declare them. */
function withoutForeignMarks(xml: string): string {
  return xml.replace(/<[^<>]*>/g, (tag) =>
    tag.replace(/\s(?!r:|xml:)[A-Za-z_][\w.-]*:[\w.-]+=(?:"[^"]*"|'[^']*')/g, ""),
  );
}

/** Text between an element's tags. */
export function innerText(xml: string): string {
  return unescaped(/^<[^<>]*>([\s\S]*?)<\/\w+>$/.exec(xml)?.[1] ?? "");
}

export function nameXml(name: string, ref: string): string {
  return `<definedName name="${escaped(name)}">${escaped(ref)}</definedName>`;
}
