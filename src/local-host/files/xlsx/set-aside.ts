import { strToU8 } from "fflate";
import { type Carried, putCarried, takeCarried, withoutForeignMarks } from "./carried";
import { withOwnFormulas } from "./own-formulas";
import { handHeights, type RowHeights, withHandHeights } from "./row-heights";
import { tabText, textOf, withElements } from "./tab-elements";
import { withUsualPlaces } from "./usual-places";
import { attribute, escaped, partText, sheetPaths, unescaped } from "./xml-text";
import type { Parts } from "./zip-parts";

/** What a file holds as it is written in it: the library would drop it, or unroll it cell by cell. */
export type SetAside = {
  /** Each `<definedName>` with the tab it belongs to, null for the whole workbook. */
  readonly names: readonly { readonly xml: string; readonly tab: string | null }[];
  /** Each `<dataValidation>` of a tab, by the tab's name. */
  readonly validations: ReadonlyMap<string, readonly string[]>;
  /** Heights of a tab's rows that were set by hand, by the tab's name. */
  readonly heights: ReadonlyMap<string, RowHeights>;
  /** Links, tables, filters and protections of a tab, by the tab's name. */
  readonly carried: ReadonlyMap<string, Carried>;
};

const namesBlock = /<definedNames\b[^<>]*?(?:\/>|>[\s\S]*?<\/definedNames>)/;
const oneName = /<definedName\b[^<>]*?(?:\/>|>[\s\S]*?<\/definedName>)/g;
const listsBlock = /<dataValidations\b[^<>]*?(?:\/>|>[\s\S]*?<\/dataValidations>)/;
const oneList = /<dataValidation\b[^<>]*?(?:\/>|>[\s\S]*?<\/dataValidation>)/g;
/** Takes these out of a file's parts. */
export function setAside(parts: Parts): { readonly aside: SetAside; readonly rest: Parts } {
  const { carried, rest: plain } = takeCarried(withUsualPlaces(withOwnFormulas(parts)));
  const rest = new Map(plain);
  const tabs = [...sheetPaths(parts).keys()];
  const workbook = partText(parts, "xl/workbook.xml");
  const block = namesBlock.exec(workbook)?.[0] ?? "";
  const names = [...block.matchAll(oneName)].map(([xml]) => xml);
  rest.set("xl/workbook.xml", strToU8(workbook.replace(namesBlock, "")));
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
      names: names.map((xml) => {
        const at = attribute(xml.slice(0, xml.indexOf(">") + 1), "localSheetId");
        return { xml, tab: at === null ? null : (tabs[Number(at)] ?? null) };
      }),
      validations,
      heights,
      carried,
    },
    rest,
  };
}

/** Puts names and lists back into a file the library wrote. */
export function putBack(written: Parts, { names, validations, heights, carried }: SetAside): Parts {
  const parts = new Map(putCarried(written, carried));
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
    const text = tabText(partText(parts, path));
    const xml = `<dataValidations count="${lists.length}">${lists.join("")}</dataValidations>`;
    if (text)
      parts.set(path, strToU8(textOf(withElements(text, [{ name: "dataValidations", xml }]))));
  }
  for (const [tab, path] of paths) {
    const text = partText(parts, path);
    const mended = withHandHeights(text, heights.get(tab) ?? {});
    if (mended !== text) parts.set(path, strToU8(mended));
  }
  return parts;
}

/** Text between an element's tags. */
export function innerText(xml: string): string {
  return unescaped(/^<[^<>]*>([\s\S]*?)<\/\w+>$/.exec(xml)?.[1] ?? "");
}

export function nameXml(name: string, ref: string): string {
  return `<definedName name="${escaped(name)}">${escaped(ref)}</definedName>`;
}
