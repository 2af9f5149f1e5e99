import type { Day } from "../../coaching/calendar/day";
import { accept, type Outcome, refuse } from "../../outcome";
import type { Cells } from "../../rows/cells";
import { neededFields } from "../../rows/header/columns";
import { fieldHeading } from "../../rows/header/field-heading";
import { findHeader } from "../../rows/header/find-header";
import { readOnce } from "../../rows/read-once";
import type { Reading } from "../../rows/reading";
import type { RowOf } from "../../rows/table/read-view";
import { endOfRows } from "../../rows/table/trim-padding";
import { type TableName, tableNames } from "../../rows/table-name";
import { isBlank, rowsOf } from "./elementwise";

/** A table given to a formula: what was read, and the cells it was read from. */
export type TableArgument<T extends TableName> = {
  readonly table: T;
  readonly reading: Reading<RowOf[T]>;
  readonly cells: Cells;
};

/**
 * One table of rows from a formula's argument, its header found by words. Issues in single cells
 * stay in the reading; what spoils the whole argument is refused. `today`, the day the formula is
 * asked about, settles the year of dates written without one.
 *
 * Refuses `argument-table-empty`, `argument-one-cell`, `argument-other-table` (another table's
 * header is there: two arguments swapped), `argument-no-header` and `argument-column-missing`.
 */
export function tableArgument<T extends TableName>(
  table: T,
  name: string,
  argument: unknown,
  today?: Day,
): Outcome<TableArgument<T>> {
  if (!Array.isArray(argument)) {
    return isBlank(argument)
      ? refuse("argument-table-empty", { name, table })
      : refuse("argument-one-cell", { name, table });
  }
  const cells: Cells = rowsOf(argument);
  if (endOfRows(cells) === 0) return refuse("argument-table-empty", { name, table });
  const reading = readOnce(table, cells, today ?? null);
  const spoiled = reading.issues.filter(
    ({ code }) => code === "no-header" || code === "column-missing",
  );
  const other =
    spoiled.length > 0
      ? otherTable(table, cells, 1)
      : saysNothing(table, cells) && otherTable(table, cells, 2);
  if (other) return refuse("argument-other-table", { name, table, other });
  if (spoiled.length === 0) return accept({ table, reading, cells });
  const said = (field: string | number) => fieldHeading(table, String(field));
  const missing = spoiled.flatMap(({ facts }) => (facts.field ? [said(facts.field)] : []));
  return missing.length > 0 && missing.length < neededFields[table].length
    ? refuse("argument-column-missing", { name, table, missing: missing.join(" and ") })
    : refuse("argument-no-header", {
        name,
        table,
        needed: neededFields[table].map(said).join(", "),
      });
}

/** A table that may be left out: then there are no rows of it. */
export function optionalTable<T extends TableName>(
  table: T,
  name: string,
  argument: unknown,
  today?: Day,
): Outcome<TableArgument<T>> {
  const left = Array.isArray(argument)
    ? argument.every((row: unknown) => (Array.isArray(row) ? row.every(isBlank) : isBlank(row)))
    : isBlank(argument);
  return left
    ? accept({ table, reading: nothing, cells: [] })
    : tableArgument(table, name, argument, today);
}

const nothing: Reading<never> = {
  records: [],
  issues: [],
  rowsRead: 0,
  rowsReported: 0,
  rowsBlank: 0,
  rowsHeading: 0,
};

/** Columns that tell no figure, and that several tables have. */
const besideFigures: readonly string[] = ["minute", "note", "private"];

/** Whether the header has what the table needs and nothing else of it: days and names of some other table. */
function saysNothing(table: TableName, cells: Cells): boolean {
  const header = findHeader(table, cells, endOfRows(cells));
  const without: readonly string[] = [...neededFields[table], ...besideFigures];
  return (
    header !== null &&
    header.missing.length === 0 &&
    Object.keys(header.fields).every((field) => without.includes(field))
  );
}

/** The table that the header names so many more meanings of, or more still. */
function otherTable(table: TableName, cells: Cells, more: number): TableName | undefined {
  const others = tableNames.filter((one) => one !== table && fits(one, cells));
  const most = Math.max(...others.map((one) => headingsNamed(one, cells)));
  if (most < headingsNamed(table, cells) + more) return undefined;
  return others.find((one) => headingsNamed(one, cells) === most);
}

function fits(table: TableName, cells: Cells): boolean {
  if (neededFields[table].length < 2) return false;
  const header = findHeader(table, cells, endOfRows(cells));
  return header !== null && header.missing.length === 0;
}

/** Headings that mean something in a table. */
function headingsNamed(table: TableName, cells: Cells): number {
  return Object.keys(findHeader(table, cells, endOfRows(cells))?.fields ?? {}).length;
}
