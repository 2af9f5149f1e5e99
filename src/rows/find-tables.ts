import type { Cells } from "./cells";
import { neededFields, tableColumns } from "./header/columns";
import { findHeader } from "./header/find-header";
import { plainWords } from "./header/header-words";
import { type ReadOptions, type Understanding, understandTable } from "./read-table";
import { endOfRows } from "./table/trim-padding";
import { type TableName, tableNames } from "./table-name";

/** One tab of a workbook. */
export type Tab = { readonly name: string; readonly cells: Cells };

/** A table found in a tab. One tab may hold two: sets and the jumps kept among them. */
export type FoundTable = {
  readonly tab: string;
  readonly table: TableName;
  /** 0–1; below 0.6 it should be asked before it is used. */
  readonly sureness: number;
  readonly understanding: Understanding<TableName>;
};

/**
 * Looks through the tabs for the tables the add-on knows. A tab is the table whose needed headings
 * it has and whose further headings it shares most; its name counts as evidence. Sets and jumps are
 * also looked for in coaches' own layouts.
 */
export function findTables(
  tabs: readonly Tab[],
  options: Omit<ReadOptions, "title"> = {},
): FoundTable[] {
  return tabs.flatMap(({ name, cells }) => {
    const end = endOfRows(cells);
    if (end === 0) return [];
    const fits = tableNames
      .map((table) => ({ table, fit: headerFit(table, name, cells, end) }))
      .sort((a, b) => b.fit - a.fit);
    const [best, second] = fits;
    if (best === undefined) return [];
    const read = (table: TableName) =>
      understandTable<TableName>(table, cells, { ...options, title: name });
    // A grid of dates has an athletes' column too; the grid tells more.
    const grid = best.table === "Athletes" ? ownLayouts(name, ["Sets", "Jumps"], read) : [];
    if (grid.some(({ sureness }) => sureness >= 0.6)) return grid;
    if (best.fit >= 0.5) {
      const lead = best.fit - (second?.fit ?? 0);
      const found = {
        tab: name,
        table: best.table,
        sureness: Math.min(1, best.fit * (lead < 0.05 ? 0.55 : 1)),
        understanding: read(best.table),
      };
      return best.table === "Sets" ? [found, ...ownLayouts(name, ["Jumps"], read)] : [found];
    }
    return ownLayouts(name, ["Sets", "Jumps"], read);
  });
}

/** Sets and jumps read from a layout without a plain header; as sure as the share of rows read. */
function ownLayouts(
  tab: string,
  tables: readonly TableName[],
  read: (table: TableName) => Understanding<TableName>,
): FoundTable[] {
  const found = tables.flatMap((table) => {
    const understanding = read(table);
    const { records, rowsRead, rowsReported } = understanding.reading;
    if (records.length === 0 || understanding.layout === "plain rows") return [];
    const useful =
      records.filter((record) => !("heightCm" in record) || hasFigure(record)).length /
      records.length;
    const sureness = (useful * rowsRead) / Math.max(rowsRead + rowsReported, 1);
    return sureness < 0.3 ? [] : [{ tab, table, sureness: 0.9 * sureness, understanding }];
  });
  // Under a header of dates stand sets or jumps, not both.
  const [one, other] = found;
  if (one === undefined || other === undefined || one.understanding.layout !== "dates across")
    return found;
  return [one.sureness >= other.sureness ? one : other];
}

function hasFigure(record: {
  readonly heightCm: number | null;
  readonly stackKg: readonly number[];
  readonly contactS: number | null;
  readonly flightS: number | null;
}): boolean {
  return (
    record.heightCm !== null ||
    record.stackKg.length > 0 ||
    record.contactS !== null ||
    record.flightS !== null
  );
}

/** How well a tab's header fits a table: all needed headings, then the share of headings it knows. */
function headerFit(table: TableName, tab: string, cells: Cells, end: number): number {
  const header = findHeader(table, cells, end);
  const named = plainWords(tab).includes(table.toLowerCase().replace(/s$/, "")) ? 0.15 : 0;
  if (header === null || header.missing.length > 0) return 0;
  const known = Object.keys(header.fields).length + header.repColumns.length;
  const share = known / (known + header.unknown.length);
  // A table of two needed headings that knows nothing else is no proof on its own.
  const further = Math.min(
    1,
    (known - neededFields[table].length) / Math.min(3, Object.keys(tableColumns[table]).length),
  );
  return Math.min(1, 0.35 + 0.35 * share + 0.15 * Math.max(0, further) + named);
}
