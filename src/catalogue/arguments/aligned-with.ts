import { refuse } from "../../outcome";
import { readAthletesArgument } from "../../rows/argument/athletes-argument";
import { recogniseHeader } from "../../rows/header/recognise-header";
import { isBlank, rowsOf, withUnit } from "./elementwise";
import { thrown } from "./thrown";

/** A column of values beside a column of athletes. */
export type Aligned = {
  /** The athletes, repeated when one was given beside several values. */
  readonly athletes: unknown;
  /** Value beside the athlete of that place in the result. */
  readonly cellAt: (at: number) => unknown;
};

/**
 * Lays a column of values beside the athletes: one value counts for all, one athlete is asked about
 * every value, and two columns go row by row, headings left aside in both; a unit in the heading of the
 * values goes with each.
 * Throws `column-too-wide` and `columns-differ`.
 */
export function alignedWith(athletes: unknown, values: unknown, name: string): Aligned {
  const column = rowsOf(values);
  if (column.length > 1 && column.some((row) => row.length > 1)) {
    thrown(refuse("column-too-wide", { name }));
  }
  const cells = column.length === 1 ? column[0]! : column.map((row) => row[0]);
  const { single, asked, table } = readAthletesArgument(athletes);
  if (cells.length === 1) return { athletes, cellAt: () => cells[0] };
  if (single) {
    let end = cells.length;
    while (end > 1 && isBlank(cells[end - 1])) end--;
    const from = headed(cells) ? 1 : 0;
    const repeated = Array.from({ length: end - from }, () => [asked[0]!.athlete]);
    return { athletes: repeated, cellAt: (at) => withUnit(cells[at + from], cells[from - 1]) };
  }
  const names = rowsOf(athletes);
  const height = names.length === 1 ? names[0]!.length : names.length;
  if (cells.length !== height) {
    thrown(
      refuse("columns-differ", { name, rows: cells.length, other: "athletes", otherRows: height }),
    );
  }
  const from = table ? headingRow(names) + 1 : headingFirst(names) ? 1 : 0;
  return { athletes, cellAt: (at) => withUnit(cells[at + from], cells[from - 1]) };
}

/** A first cell with words above numbers is a heading. */
function headed([first, ...rest]: readonly unknown[]): boolean {
  return typeof first === "string" && /[a-z]/i.test(first) && rest.some((cell) => !isBlank(cell));
}

/** Whether the first athlete cell is a heading: then nobody is asked about with it alone. */
function headingFirst(names: readonly (readonly unknown[])[]): boolean {
  const first = names[0]?.[0];
  return readAthletesArgument([[first], ["Ilka Brandmoor"]]).asked.length === 1;
}

function headingRow(rows: readonly (readonly unknown[])[]): number {
  return rows.findIndex((row) => recogniseHeader("Athletes", row).fields.athlete !== undefined);
}
