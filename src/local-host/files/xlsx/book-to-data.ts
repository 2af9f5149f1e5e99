import { accept, type Outcome, refuse } from "../../../outcome";
import type { ConditionalFormat, NamedRange, TabData, WorkbookData } from "../../workbook-data";
import { limits } from "../limits";
import { styleOf } from "./cell-from-file";
import { cellsOf } from "./cells-of-sheet";
import type { FillMark } from "./fill-marks";
import { formulaFromFile } from "./formula-text";
import { hiddenLines } from "./hidden-lines";
import { type Book, fillsKey, memoryTab, pixelsOf, rulesOf, type Sheet } from "./library";
import { listsOf } from "./lists";
import { listKey } from "./long-lists";
import { innerText, type SetAside } from "./set-aside";
import { attribute } from "./xml-text";

/**
 * A file as the library read it, as plain data.
 *
 * @returns refuses `too-many-tabs`, `too-many-rows`, `too-many-columns`, `too-many-cells`
 */
export function bookToData(name: string, book: Book, aside: SetAside): Outcome<WorkbookData> {
  if (book.worksheets.length > limits.tabs) return refuse("too-many-tabs", { most: limits.tabs });
  const tabs: TabData[] = [];
  const marks = marksOf(book);
  const memory = book.getWorksheet(memoryTab);
  const remembered = (row: number) => memory?.findCell(row, 2)?.text ?? "";
  let cells = 0;
  for (const sheet of book.worksheets) {
    if (sheet.name === memoryTab) continue;
    const tab = tabData(sheet, aside, marks, remembered);
    if (!tab.ok) return tab;
    cells += tab.value.cells.reduce((sum, line) => sum + line.length, 0);
    if (cells > limits.cells) return refuse("too-many-cells", { most: limits.cells });
    tabs.push(tab.value);
  }
  return accept({ name, tabs, names: namesOf(aside), properties: memoryOf(book) });
}

function tabData(
  sheet: Sheet,
  aside: SetAside,
  marks: readonly FillMark[],
  remembered: (row: number) => string,
): Outcome<TabData> {
  const cells = cellsOf(sheet, marks);
  if (!cells.ok) return cells;
  // A tab without views gives null, whatever the library's types say.
  const view = (sheet.views as Sheet["views"] | null)?.[0];
  const frozen = view?.state === "frozen" ? view : null;
  const columns = Math.max(0, ...cells.value.map((line) => line.length));
  const merged = (sheet as unknown as { _merges: Record<string, { range: string }> })._merges;
  const heights = aside.heights.get(sheet.name) ?? {};
  const mergedRanges = Object.values(merged).map(({ range }) => range);
  return accept({
    name: sheet.name,
    cells: cells.value,
    frozenRows: frozen?.ySplit ?? 0,
    frozenColumns: frozen?.xSplit ?? 0,
    columnWidths: Array.from({ length: columns }, (_, column) => {
      const { width } = sheet.getColumn(column + 1);
      return width === undefined ? null : pixelsOf(width);
    }),
    ...(Object.keys(heights).length > 0 && { rowHeights: heights }),
    ...hiddenLines(sheet, cells.value.length, columns),
    conditionalFormats: rulesOf(sheet).flatMap(({ ref, rules }) =>
      rules.flatMap((rule) => formatOf(ref, rule)),
    ),
    validations: (aside.validations.get(sheet.name) ?? []).flatMap((xml) =>
      listsOf(xml, remembered),
    ),
    ...(sheet.state !== "visible" && { hidden: true }),
    ...(mergedRanges.length > 0 && { merged: mergedRanges }),
  });
}

function formatOf(
  ref: string,
  rule: ReturnType<typeof rulesOf>[number]["rules"][number],
): ConditionalFormat[] {
  const formula = rule.formulae?.[0];
  if (rule.type !== "expression" || formula === undefined) return [];
  const fill = rule.style?.fill;
  // In conditional formats a plain fill is written as the pattern's background.
  const solid =
    fill?.type === "pattern"
      ? { ...fill, pattern: "solid" as const, fgColor: fill.bgColor ?? fill.fgColor ?? {} }
      : undefined;
  const look = styleOf({ ...rule.style, ...(solid && { fill: solid }) }) ?? {};
  const { background, colour, bold, italic } = look;
  return [
    {
      ranges: ref.split(/\s+/),
      formula: formulaFromFile(String(formula)),
      ...(background !== undefined && { background }),
      ...(colour !== undefined && { colour }),
      ...(bold && { bold }),
      ...(italic && { italic }),
    },
  ];
}

function namesOf({ names }: SetAside): readonly NamedRange[] {
  return names.flatMap(({ xml, tab }) => {
    const tag = xml.slice(0, xml.indexOf(">") + 1);
    const name = attribute(tag, "name");
    if (tab !== null || name === null || attribute(tag, "hidden") === "1") return [];
    return [{ name, ref: formulaFromFile(innerText(xml)).slice(1) }];
  });
}

function memoryOf(book: Book): Readonly<Record<string, string>> {
  const kept: Record<string, string> = {};
  book.getWorksheet(memoryTab)?.eachRow((row) => {
    const key = row.getCell(1).text;
    if (!["", "__proto__", fillsKey, listKey].includes(key)) kept[key] = row.getCell(2).text;
  });
  return kept;
}

function marksOf(book: Book): readonly FillMark[] {
  const marks: FillMark[] = [];
  book.getWorksheet(memoryTab)?.eachRow((row) => {
    const [key, tab, ref, sum] = [1, 2, 3, 4].map((column) => row.getCell(column).text);
    if (key === fillsKey) marks.push({ tab: tab!, ref: ref!, sum: sum! });
  });
  return marks;
}
