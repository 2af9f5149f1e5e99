import type { Cells } from "../../cells";
import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { headsNotes } from "../../header/unknown-column";
import type { TableName } from "../../table-name";
import type { Unit } from "../../value/units";
import type { LayoutContext } from "../layout-context";
import { isOfOthers, isTry, setsUnderDate } from "./sets-under-date";
import { isJumpColumn, partOf, testName } from "./test-heading";
import type { HeaderDate } from "./week-header";

/** What a heading under a date names; no field for one more of what the title says. */
export type SubHeading = {
  readonly field: string | null;
  readonly unit: Unit | null;
  /** The lift it names besides: "Squat kg". */
  readonly exercise?: string;
};

/**
 * Meanings named in the row under the dates ("kg", "m/s", "notes"), by column; a row that heads the
 * athletes' names is such a row too. Left of the dates only notes count, and so they do beside them.
 * `others` are columns whose heading names what the table does not hold.
 */
export function subHeadings(
  { table, cells, end }: LayoutContext,
  header: { row: number; lastRow: number; dates: readonly HeaderDate[] },
): {
  lastRow: number;
  fields: ReadonlyMap<number, SubHeading>;
  others: ReadonlySet<number>;
} {
  const others = new Set<number>();
  const row = header.row + 1;
  const line = cells[row] ?? [];
  const lookup = headingLookup(table);
  const beside = notesBeside(cells[header.row]!);
  const fields = new Map(beside);
  const firstDate = header.dates[0]!.column;
  const left = line.slice(0, firstDate).map((cell) => headerWords(cell));
  for (const [column, { words, unit }] of left.entries())
    if (headsNotes.test(words)) fields.set(column, { field: "note", unit });
  const headsNames = left.some(({ words }) => lookup.get(words) === "athlete");
  let named = 0;
  for (let column = firstDate; column < line.length; column++) {
    const found = headingUnder(table, cells, { row, column, end }, headsNames);
    if (found !== null) {
      fields.set(column, found);
      named++;
    } else if (isOfOthers(table, line[column])) others.add(column);
  }
  return header.lastRow > header.row || headsNames || named >= 2
    ? { lastRow: row, fields, others }
    : { lastRow: header.row, fields: beside, others: new Set() };
}

function headingUnder(
  table: TableName,
  cells: Cells,
  place: { readonly row: number; readonly column: number; readonly end: number },
  headsNames: boolean,
): SubHeading | null {
  const cell = cells[place.row]![place.column];
  const { words, unit } = headerWords(cell);
  const field = headingLookup(table).get(words === "" && unit !== null ? unit.name : words);
  if (field !== undefined) return { field, unit };
  if (headsNotes.test(words)) return { field: "note", unit };
  if (table === "Sets" && done.test(words)) return { field: "load", unit };
  if (table === "Jumps" && testUnderDate(cell) !== null) return { field: "height", unit };
  // A number alone may be data where no names are headed.
  if (!headsNames && !/\p{L}/u.test(words)) return null;
  if (table === "Jumps" ? isTry(cell) : table === "Runs" && halfOfDay.test(words))
    return { field: null, unit };
  return table === "Sets" ? setsUnderDate(cells, place) : null;
}

/** The jump test that a heading under a date names; null where it names a figure of one, or anything else. */
export const testUnderDate = (cell: unknown): string | null =>
  typeof cell === "string" && isJumpColumn(cell) && partOf(cell) === null ? testName(cell) : null;

/** Two runs of one day. */
const halfOfDay =
  /^(?:am|pm|morning|afternoon|evening|fruh|morgens?|mittags?|nachmittags?|abends?)$/;

/** Beside what was planned. */
const done = /^(?:done|actual|lifted|ist|gemacht)$/;

/** "Notes" in the row of the dates itself; not every table has a column of its own for them. */
function notesBeside(line: readonly unknown[]): ReadonlyMap<number, SubHeading> {
  return new Map(
    line.flatMap((cell, column) =>
      headsNotes.test(headerWords(cell).words) ? [[column, { field: "note", unit: null }]] : [],
    ),
  );
}
