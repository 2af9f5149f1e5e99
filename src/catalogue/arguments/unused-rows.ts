import { nameKey } from "../../coaching/record/name-key";
import { neededFields } from "../../rows/header/columns";
import { findHeader } from "../../rows/header/find-header";
import type { TableName } from "../../rows/table-name";
import { countWords } from "../../words/reasons-figures";
import type { TableArgument } from "./table-argument";

/** Rows with a cell that could not be used, by athlete, over every table a formula was given. */
export type UnusedRows = {
  /** Rows of this athlete with at least one cell not used, and headings over a column of which none is. */
  readonly of: (athlete: string) => number;
  /** Rows of nobody asked about: a name not in the list, or none that can be read. */
  readonly beside: (athletes: readonly string[]) => number;
  readonly shared: SharedRows;
};

/** What of them is told beside an athlete's answer. */
export type ToldBeside = Pick<UnusedRows, "of" | "shared">;

/** Rows not used that are of no one athlete: they are told once. */
export type SharedRows = {
  /** Those that name nobody at all: they may be anybody's. */
  readonly nameless: number;
  /** Those of tables that need no athlete, such as Rules: they bear on everybody. */
  readonly ofTable: ReadonlyMap<TableName, number>;
};

/** Rows of one table that name an athlete and were left out whole. */
export function droppedRowsOf(
  { table, reading, cells }: TableArgument<TableName>,
  athlete: string,
): number {
  const column = findHeader(table, cells, cells.length)?.fields.athlete?.index;
  const rows = new Set(reading.issues.filter(({ dropsRow }) => dropsRow).map(({ row }) => row));
  return [...rows].filter((row) => {
    const cell = column === undefined ? "" : cells[row - 1]?.[column];
    return typeof cell === "string" && nameKey(cell) === nameKey(athlete);
  }).length;
}

/** Counts each row once, however many of its cells are not used. */
export function unusedRows(tables: readonly TableArgument<TableName>[]): UnusedRows {
  const counts = new Map<string, number>();
  const ofTable = new Map<TableName, number>();
  let nameless = 0;
  let columns = 0;
  for (const { table, reading, cells } of tables) {
    if (reading.issues.length === 0) continue;
    const column = findHeader(table, cells, cells.length)?.fields.athlete?.index;
    const nameIn = (row: number) => {
      const cell = column === undefined ? "" : cells[row - 1]?.[column];
      return typeof cell === "string" ? nameKey(cell) : "";
    };
    const needed: readonly string[] = neededFields[table];
    const everybodys = !needed.includes("athlete");
    // A column whose unit is in doubt is nobody's figure until it is settled.
    const cellsOfRows = reading.issues.filter(({ code }) => code !== "unit-unsettled");
    columns += reading.issues.length - cellsOfRows.length;
    for (const row of new Set(cellsOfRows.map((issue) => issue.row))) {
      const key = nameIn(row);
      counts.set(key, (counts.get(key) ?? 0) + 1);
      if (everybodys && key === "") ofTable.set(table, (ofTable.get(table) ?? 0) + 1);
    }
    const blanks = reading.issues.filter(({ code }) => code === "needed-blank");
    if (!everybodys)
      nameless += new Set(blanks.flatMap(({ row }) => (nameIn(row) === "" ? [row] : []))).size;
  }
  return {
    shared: { nameless, ofTable },
    of: (athlete) => (athlete === "" ? 0 : (counts.get(nameKey(athlete)) ?? 0) + columns),
    beside: (athletes) => {
      const asked = new Set(athletes.map(nameKey));
      let rows = 0;
      for (const [key, count] of counts) if (!asked.has(key) || key === "") rows += count;
      return rows;
    },
  };
}

/** A reason, with the rows that could not be used said after it. */
export function withUnused(reason: string, rows: number): string {
  if (rows === 0) return reason;
  return followed(reason, `${countWords(rows, "row")} with a cell not used (see ROW_CHECK)`);
}

/** The same of rows that are of no one athlete. */
export function withShared(reason: string, { nameless, ofTable }: SharedRows): string {
  const name = nameless === 1 ? "names" : "name";
  const said = [
    ...(nameless > 0 ? [`${countWords(nameless, "row")} that ${name} nobody not used`] : []),
    ...[...ofTable].map(
      ([table, rows]) => `${countWords(rows, "row")} of ${table} with a cell not used`,
    ),
  ];
  return said.length === 0 ? reason : followed(reason, `${said.join(", ")} (see ROW_CHECK)`);
}

const wholeSentence = /[.?]$/;

/** A whole sentence is followed by another; part of one goes on, and what ends it is left to its cell. */
function followed(reason: string, said: string): string {
  if (reason === "") return said;
  return wholeSentence.test(reason) ? `${reason} Also ${said}.` : `${reason}; ${said}`;
}

/** A reason and the notes beside it, in one cell. */
export function sentences(reason: string, notes: readonly string[]): string {
  return [wholeSentence.test(reason) || notes.length === 0 ? reason : `${reason}.`, ...notes].join(
    " ",
  );
}
