import { accept, type Outcome, refuse } from "../../../outcome";
import { rectangle } from "../../a1";
import type {
  CellData,
  ConditionalFormat,
  NamedRange,
  TabData,
  WorkbookData,
} from "../../workbook-data";
import { limits } from "../limits";
import { cellFromFile, styleOf } from "./cell-from-file";
import { type FillMark, fits } from "./fill-marks";
import { formulaFromFile } from "./formula-text";
import { type Book, fillsKey, memoryTab, pixelsOf, rulesOf, type Sheet } from "./library";
import { listsOf } from "./lists";
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
  let cells = 0;
  for (const sheet of book.worksheets) {
    if (sheet.name === memoryTab) continue;
    const tab = tabData(sheet, aside, marks);
    if (!tab.ok) return tab;
    cells += tab.value.cells.reduce((sum, line) => sum + line.length, 0);
    if (cells > limits.cells) return refuse("too-many-cells", { most: limits.cells });
    tabs.push(tab.value);
  }
  return accept({ name, tabs, names: namesOf(aside), properties: memoryOf(book) });
}

function tabData(sheet: Sheet, aside: SetAside, marks: readonly FillMark[]): Outcome<TabData> {
  const cells = cellsOf(sheet, marks);
  if (!cells.ok) return cells;
  // A tab without views gives null, whatever the library's types say.
  const view = (sheet.views as Sheet["views"] | null)?.[0];
  const frozen = view?.state === "frozen" ? view : null;
  const columns = Math.max(0, ...cells.value.map((line) => line.length));
  const merged = (sheet as unknown as { _merges: Record<string, { range: string }> })._merges;
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
    conditionalFormats: rulesOf(sheet).flatMap(({ ref, rules }) =>
      rules.flatMap((rule) => formatOf(ref, rule)),
    ),
    validations: (aside.validations.get(sheet.name) ?? []).flatMap(listsOf),
    ...(sheet.state !== "visible" && { hidden: true }),
    ...(mergedRanges.length > 0 && { merged: mergedRanges }),
  });
}

/** Cells row by row; looks below the last filled row are left to the file. */
function cellsOf(sheet: Sheet, marks: readonly FillMark[]): Outcome<(CellData | null)[][]> {
  const lines: (CellData | null)[][] = [];
  let refusal: Outcome<never> | null = null;
  let lastFilled = 0;
  const spilled: string[] = [];
  sheet.eachRow((row, number) => {
    if (refusal) return;
    const line: (CellData | null)[] = [];
    let filled = false;
    row.eachCell((cell, column) => {
      const made = cellFromFile(cell);
      if (made && (made.value !== null || made.formula !== undefined || made.note !== undefined)) {
        filled = true;
        if (column > limits.columns) {
          refusal = refuse("too-many-columns", {
            tab: sheet.name,
            columns: column,
            most: limits.columns,
          });
          return;
        }
      }
      if (column > limits.columns) return;
      while (line.length < column) line.push(null);
      line[column - 1] = made;
      const held = cell.value as { shareType?: string; ref?: string } | null;
      if (held?.shareType === "array" && held.ref !== undefined) spilled.push(held.ref);
    });
    if (filled && number > limits.rows) {
      refusal = refuse("too-many-rows", { tab: sheet.name, rows: number, most: limits.rows });
    }
    if (refusal || number > limits.rows) return;
    while (lines.length < number) lines.push([]);
    lines[number - 1] = line;
    if (filled) lastFilled = number;
  });
  if (refusal) return refusal;
  lines.length = Math.min(lines.length, lastFilled);
  for (const mark of marks) {
    if (mark.tab === sheet.name && fits(lines, mark)) spilled.push(mark.ref);
  }
  for (const ref of spilled) gatherFills(lines, ref);
  for (const line of lines) while (line.length > 0 && line[line.length - 1] === null) line.pop();
  return accept(lines);
}

/** An array formula's results stand in the cells around it: they are its own, not typed ones. */
function gatherFills(lines: (CellData | null)[][], ref: string): void {
  const at = rectangle(ref, { rows: lines.length, columns: limits.columns });
  const first = at && lines[at.startRow]?.[at.startColumn];
  if (!at || !first) return;
  const fills: CellData["value"][][] = [];
  for (let row = at.startRow; row <= Math.min(at.endRow, lines.length - 1); row++) {
    const line = lines[row]!;
    const fillsOfRow: CellData["value"][] = [];
    for (let column = at.startColumn; column <= at.endColumn; column++) {
      const cell = line[column] ?? null;
      fillsOfRow.push(cell?.value ?? null);
      if (!cell || cell === first) continue;
      const { value: _, formula: __, ...look } = cell;
      line[column] = Object.keys(look).length > 0 ? { value: null, ...look } : null;
    }
    fills.push(fillsOfRow);
  }
  lines[at.startRow]![at.startColumn] = { ...first, fills };
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
    if (key !== "" && key !== "__proto__" && key !== fillsKey) kept[key] = row.getCell(2).text;
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
