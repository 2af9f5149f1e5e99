import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { headsNotes } from "../../header/unknown-column";
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
  const lookup = headingLookup(table);
  const beside = notesBeside(cells[header.row]!);
  const fields = new Map(beside);
  const firstDate = header.dates[0]!.column;
  let headsNames = false;
  let named = 0;
  (cells[row] ?? []).forEach((cell, column) => {
    const { words, unit } = headerWords(cell);
    const note = headsNotes.test(words) ? "note" : undefined;
    if (column < firstDate) {
      if (note !== undefined) fields.set(column, { field: note, unit });
      if (lookup.get(words) === "athlete") headsNames = true;
      return;
    }
    const field =
      lookup.get(words) ??
      note ??
      (unit !== null && words === "" ? lookup.get(unit.name) : undefined) ??
      (table === "Sets" && done.test(words) ? "load" : undefined) ??
      (table === "Jumps" && testUnderDate(cell) !== null ? "height" : undefined);
    // A number alone may be data where no names are headed.
    const heads = headsNames || /\p{L}/u.test(words);
    const found =
      field !== undefined
        ? { field, unit }
        : heads && table === "Jumps" && isTry(cell)
          ? { field: null, unit }
          : heads && table === "Sets"
            ? setsUnderDate(cells, { row, column, end })
            : null;
    if (found !== null) {
      fields.set(column, found);
      named++;
    } else if (isOfOthers(table, cell)) others.add(column);
  });
  return header.lastRow > header.row || headsNames || named >= 2
    ? { lastRow: row, fields, others }
    : { lastRow: header.row, fields: beside, others: new Set() };
}

/** The jump test that a heading under a date names; null where it names a figure of one, or anything else. */
export const testUnderDate = (cell: unknown): string | null =>
  typeof cell === "string" && isJumpColumn(cell) && partOf(cell) === null ? testName(cell) : null;

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
