import { headsNotes } from "../../header/decide-columns";
import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import type { Unit } from "../../value/units";
import type { LayoutContext } from "../layout-context";
import type { HeaderDate } from "./week-header";

/** Notes stand under dates whatever the table; not every table has a column of its own for them. */
const isNote = (words: string): boolean =>
  headingLookup("Sets").get(words) === "note" || headsNotes.test(words);

/** What a heading under a date names. */
export type SubHeading = { readonly field: string; readonly unit: Unit | null };

/** Meanings named in the row under the dates ("kg", "m/s", "notes"), by column. */
export function subHeadings(
  { table, cells }: LayoutContext,
  header: { row: number; lastRow: number; dates: readonly HeaderDate[] },
): { lastRow: number; fields: ReadonlyMap<number, SubHeading> } {
  const row = header.lastRow === header.row ? header.row + 1 : header.lastRow;
  const lookup = headingLookup(table);
  const fields = new Map<number, SubHeading>();
  const firstDate = header.dates[0]!.column;
  let named = 0;
  (cells[row] ?? []).forEach((cell, column) => {
    if (typeof cell !== "string") return;
    const { words, unit } = headerWords(cell);
    if (column < firstDate) {
      if (isNote(words)) fields.set(column, { field: "note", unit: null });
      return;
    }
    const field =
      lookup.get(words) ??
      (isNote(words) ? "note" : undefined) ??
      (unit !== null && words === "" ? lookup.get(unit.name) : undefined);
    if (field === undefined) return;
    fields.set(column, { field, unit });
    named++;
  });
  const isHeader = header.lastRow > header.row || named >= 2;
  return isHeader
    ? { lastRow: row, fields }
    : { lastRow: header.row, fields: notesBeside(cells[header.row]!) };
}

/** "Notes" in the row of the dates itself, as where nothing else is named under them. */
function notesBeside(line: readonly unknown[]): ReadonlyMap<number, SubHeading> {
  return new Map(
    line.flatMap((cell, column) =>
      isNote(headerWords(cell).words) ? [[column, { field: "note", unit: null }]] : [],
    ),
  );
}
