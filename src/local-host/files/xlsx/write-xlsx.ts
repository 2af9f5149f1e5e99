import type { XlsxWriteOptions } from "exceljs";
import { unzipSync, zipSync } from "fflate";
import { accept, type Outcome, refuse } from "../../../outcome";
import type { TabData, Validation, WorkbookData } from "../../workbook-data";
import { isTabName, longestTabName } from "../tab-names";
import { bookToData } from "./book-to-data";
import type { Carried } from "./carried";
import { dataToBook } from "./data-to-book";
import { formulaForFile, formulaFromFile } from "./formula-text";
import { keptTables } from "./kept-tables";
import { type Book, newBook } from "./library";
import { isRemembered, listsOf, listXml } from "./lists";
import { keyOf, longLists } from "./long-lists";
import { movedParts } from "./moved-parts";
import { withOwnFormulas } from "./own-formulas";
import { withOwnProperties } from "./own-properties";
import { bookOf } from "./read-xlsx";
import { innerText, nameXml, putBack, type SetAside, setAside } from "./set-aside";
import { tabBefore, tabMoves } from "./tab-moves";
import { whatWouldBeLost } from "./what-would-be-lost";
import { attribute } from "./xml-text";
import { type Parts, zipParts } from "./zip-parts";

const nothing: SetAside = {
  names: [],
  validations: new Map(),
  heights: new Map(),
  carried: new Map(),
};

/**
 * A workbook as the bytes of an .xlsx file. Given the file it came from, only what changed is
 * written into it, and everything else it holds stays.
 *
 * @param purpose a copy leaves the original as it is, so it may lack what cannot be kept
 * @param own names of the add-on's functions, upper case
 * @returns refuses `tab-name-unfit` and `tab-name-twice` (facts `tab`), `save-would-lose` (facts `what`), what `keptTables`
 * refuses, and `not-xlsx` when the original is damaged
 */
export async function writeXlsx(
  workbook: WorkbookData,
  original: Uint8Array | null,
  purpose: "in place" | "a copy" = "in place",
  own: ReadonlySet<string> = new Set(),
): Promise<Outcome<Uint8Array>> {
  const unfit = workbook.tabs.find(({ name }) => !isTabName(name));
  // The library would cut the name short without a word, and formulas that name the tab would break.
  if (unfit) return refuse("tab-name-unfit", { tab: unfit.name, most: longestTabName });
  const names = workbook.tabs.map(({ name }) => name.toLowerCase());
  const twice = workbook.tabs.find((_, place) => names.indexOf(names[place]!) < place);
  if (twice) return refuse("tab-name-twice", { tab: twice.name });
  if (original === null) {
    const book = await newBook();
    dataToBook(book, null, workbook, own);
    const made = asideFor(nothing, null, workbook);
    return made.ok ? accept(await packed(book, made.value, null)) : made;
  }
  const parts = zipParts(original);
  if (!parts.ok) return parts;
  const lost = whatWouldBeLost(parts.value);
  if (lost.length > 0 && purpose === "in place")
    return refuse("save-would-lose", { what: lost.join(", ") });
  const inPlace = await loaded(withOwnFormulas(parts.value), workbook);
  if (!inPlace) return refuse("not-xlsx");
  const { book, before, aside } = inPlace;
  const made = asideFor(aside, before, workbook);
  if (!made.ok) return made;
  dataToBook(book, before, workbook, own);
  return accept(await packed(book, made.value, parts.value));
}

type Loaded = {
  readonly book: Book;
  readonly before: WorkbookData;
  readonly aside: SetAside;
};

/** The file with its rows and columns where the workbook has them now; null when it is damaged. */
async function loaded(parts: Parts, workbook: WorkbookData): Promise<Loaded | null> {
  const asItWas = await loadedOnce(parts, workbook.name);
  const moves = asItWas && tabMoves(asItWas.before, workbook);
  return moves && moves.size > 0 ? loadedOnce(movedParts(parts, moves), workbook.name) : asItWas;
}

async function loadedOnce(parts: Parts, name: string): Promise<Loaded | null> {
  const { aside, rest } = setAside(parts);
  const book = await bookOf(rest);
  const before = book && bookToData(name, book, aside);
  return before?.ok ? { book: book!, before: before.value, aside } : null;
}

async function packed(book: Book, aside: SetAside, original: Parts | null): Promise<Uint8Array> {
  // Pressed once, at the end.
  const plain = { zip: { compression: "STORE" } } as Partial<XlsxWriteOptions>;
  const written = unzipSync(new Uint8Array(await book.xlsx.writeBuffer(plain)));
  const parts = putBack(new Map(Object.entries(written)), aside);
  return zipSync(Object.fromEntries(withOwnProperties(parts, original)), { level: 4 });
}

/**
 * Names, lists, tables and the like for the file: as they were where nothing changed, written anew
 * where it did. Refuses what `keptTables` refuses.
 */
function asideFor(
  old: SetAside,
  before: WorkbookData | null,
  after: WorkbookData,
): Outcome<SetAside> {
  const long = longLists(after);
  const listsOfTab = (tab: TabData, place: number): readonly string[] => {
    const was = tabBefore(before, after, place);
    const kept = old.validations.get(was?.name ?? tab.name) ?? [];
    const same = JSON.stringify(was?.validations ?? []) === JSON.stringify(tab.validations);
    if (same && !kept.some(isRemembered)) return kept;
    const others = kept.filter((xml) => listsOf(xml, () => "").length === 0);
    const rowOf = ({ values }: Validation) => long.get(keyOf(values))?.row ?? null;
    return [...others, ...tab.validations.map((list) => listXml(list, rowOf(list)))];
  };
  const wanted = new Map(after.names.map(({ name, ref }) => [name, ref.replace(/^=/, "")]));
  const kept = old.names.filter(({ xml, tab }) => {
    const tag = xml.slice(0, xml.indexOf(">") + 1);
    if (tab !== null || attribute(tag, "hidden") === "1") return true;
    const name = attribute(tag, "name") ?? "";
    const same = wanted.get(name) === formulaFromFile(innerText(xml)).slice(1);
    if (same) wanted.delete(name);
    return same;
  });
  const carried = new Map<string, Carried>();
  const nameNow = new Map<string, string>();
  for (const [place, tab] of after.tabs.entries()) {
    const was = tabBefore(before, after, place);
    if (was) nameNow.set(was.name, tab.name);
    const held = was && old.carried.get(was.name);
    const tables = held && keptTables(held, was, tab, after);
    if (tables && !tables.ok) return tables;
    if (tables) carried.set(tab.name, tables.value);
  }
  return accept({
    names: [
      ...kept.map(({ xml, tab }) => ({
        xml,
        tab: tab === null ? null : (nameNow.get(tab) ?? tab),
      })),
      ...[...wanted].map(([name, ref]) => ({ xml: nameXml(name, formulaForFile(ref)), tab: null })),
    ],
    validations: new Map(after.tabs.map((tab, place) => [tab.name, listsOfTab(tab, place)])),
    heights: new Map(after.tabs.map(({ name, rowHeights = {} }) => [name, rowHeights])),
    carried,
  });
}
