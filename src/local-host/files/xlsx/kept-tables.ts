import { accept, type Outcome, refuse } from "../../../outcome";
import { cellName, rectangle } from "../../a1";
import type { TabData, WorkbookData } from "../../workbook-data";
import type { Carried, CarriedTable } from "./carried";
import { attribute, escaped, withAttributes } from "./xml-text";

const oneColumn = /<tableColumn\b[^<>]*>/g;

/**
 * A tab's tables for the file: each column is called as its heading is now, without which other
 * programs take the file for damaged. A table all of which was taken out is gone.
 *
 * @param before the tab as the file had it, its lines where they are now
 * @returns refuses `table-heading` (facts `cell`): a heading that is empty, no text, the same as
 * another, or another than the one that formulas name
 */
export function keptTables(
  carried: Carried,
  before: TabData | undefined,
  after: TabData,
  { tabs }: WorkbookData,
): Outcome<Carried> {
  const kept: CarriedTable[] = [];
  for (const { path, xml } of carried.tables) {
    const opening = /<table\b[^<>]*>/.exec(xml)?.[0] ?? "";
    const at = rectangle(attribute(opening, "ref") ?? "", { rows: 0, columns: 0 });
    if (!at) continue;
    if (attribute(opening, "headerRowCount") === "0") {
      kept.push({ path, xml });
      continue;
    }
    const value = (tab: TabData | undefined, column: number) =>
      tab?.cells[at.startRow]?.[column]?.value ?? null;
    const table = attribute(opening, "displayName") ?? attribute(opening, "name") ?? "";
    const taken = new Map<string, number>();
    let wrong: number | null = null;
    let column = at.startColumn;
    const named = xml.replace(oneColumn, (tag) => {
      const heading = value(after, column);
      const key = String(heading).toLowerCase();
      const name = attribute(tag, "name") ?? "";
      const fits = typeof heading === "string" && nameOf(heading) === name;
      const asItWas = fits || (heading === value(before, column) && heading !== null);
      const usable = typeof heading === "string" && heading.trim() !== "" && !taken.has(key);
      if (!asItWas && (!usable || isNamed(table, name, xml, tabs))) wrong ??= column;
      taken.set(key, column++);
      return asItWas || !usable ? tag : withAttributes(tag, { name: nameOf(heading) });
    });
    if (wrong !== null)
      return refuse("table-heading", { cell: `${after.name} ${cellName(at.startRow, wrong)}` });
    kept.push({ path, xml: named });
  }
  return accept({ ...carried, tables: kept });
}

/** Line breaks of a heading are written out in a column's name (ECMA-376 part 1, 18.5.1.3 and 22.9.2.19). */
function nameOf(heading: string): string {
  return heading.replace(/\r?\n/g, "_x000a_");
}

/** Whether a formula of the workbook or of the table calls a column by its old name. */
function isNamed(table: string, name: string, xml: string, tabs: readonly TabData[]): boolean {
  const called = `[${name.replace(/(['#[\]@])/g, "'$1")}]`;
  if (xml.includes(escaped(called)) || xml.includes(called)) return true;
  return tabs.some(({ cells }) =>
    cells.some((line) =>
      line.some((cell) => cell?.formula?.includes(called) && cell.formula.includes(table)),
    ),
  );
}
