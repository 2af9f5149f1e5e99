import { isBlank } from "../catalogue/arguments/elementwise";
import { inWarehouse, nobodyNamed } from "../words/warehouse";
import type { FigureFunction, WarehouseFunction } from "./warehouse-functions";

/** One athlete's answer: figures and words by name, or the sentence why there is none. */
export type Answer = Readonly<Record<string, string | number | null>> & {
  readonly athlete: string;
  readonly refused: string | null;
};

/**
 * Answers a formula of the spreadsheet for a squad kept in a warehouse: the very same function over
 * the very same rows. A refusal stands beside its athlete and never stops the others.
 *
 * @param cells the squad's rows as the spreadsheet's table
 * @param about the lift or the test; "" where the formula takes none
 */
export function answers(
  { formula, order, figures, rows: kind }: WarehouseFunction,
  names: readonly string[],
  cells: readonly (readonly unknown[])[],
  about: string,
  asOf: string,
): readonly Answer[] {
  const none = Object.fromEntries(order.map((name) => [name, null]));
  if (names.every(isBlank))
    return names.map((athlete) => ({ ...none, athlete, refused: nobodyNamed }));
  const checkedBy = kind === "sets" ? "check_sets" : "check_jumps";
  // A second, blank name keeps a squad of one from being answered by an error.
  const asked = [...names.map((name) => [name]), [""], [names[0]]];
  const rows = formula.compute([asked, cells, about, asOf]) as readonly (readonly unknown[])[];
  return names.map((athlete, at) => {
    if (isBlank(athlete)) return { ...none, athlete, refused: nobodyNamed };
    const row = (rows[at] ?? []).map((cell) =>
      typeof cell === "string" ? inWarehouse(cell, checkedBy) : cell,
    );
    // A refusal is a sentence in the first column with "–" in every other.
    const refused = typeof row[0] === "string" && row.slice(1).every((cell) => cell === "–");
    const said = Object.fromEntries(
      order.map((name, column) => [
        name,
        refused ? null : answerCell(row[column], figures.includes(name)),
      ]),
    );
    return { ...said, athlete, refused: refused ? String(row[0]) : null };
  });
}

/** "–" says that there is no such figure. */
function answerCell(cell: unknown, figure: boolean): string | number | null {
  if (cell === "–" || cell === "") return null;
  return figure ? (typeof cell === "number" ? cell : null) : String(cell);
}

/** Answers a formula of one figure for one row of the warehouse. */
export function figureOf(
  { formula, figure }: FigureFunction,
  given: readonly (number | null | readonly (number | null)[])[],
): Readonly<Record<string, number | string | null>> {
  const cells = given.map((one) =>
    typeof one === "object" && one !== null ? [one.map((speed) => speed ?? "")] : (one ?? ""),
  );
  try {
    const answer = formula.compute(cells);
    const [row] = Array.isArray(answer) ? (answer as readonly (readonly unknown[])[]) : [[answer]];
    return { [figure]: row?.[0] as number, refused: null };
  } catch (error) {
    // A refusal is an `Error` with its sentence; anything else is our own mistake.
    if (!(error instanceof Error) || error.constructor !== Error) throw error;
    return { [figure]: null, refused: error.message };
  }
}
