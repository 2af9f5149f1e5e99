import { squadCells, type WarehouseAthlete } from "./squad-cells";
import { type WarehouseFunction, warehouseFunctions } from "./warehouse-functions";

/** One athlete's answer: figures and words by name, or the sentence why there is none. */
export type Answer = Readonly<Record<string, string | number | null>> & {
  readonly athlete: string;
  readonly refused: string | null;
};

/**
 * Answers a formula of the spreadsheet for a squad kept in a warehouse: the very same function over
 * the very same rows. A refusal stands beside its athlete and never stops the others.
 */
function answers(
  { formula, told, order, figures }: WarehouseFunction,
  squad: readonly WarehouseAthlete[] | null,
  exercise: string,
  asOf: string,
): readonly Answer[] {
  if (squad === null || squad.length === 0) return [];
  const names = squad.map(({ athlete }) => athlete);
  const cells = squadCells(squad);
  // A second, blank name keeps a squad of one from being answered by an error.
  const asked = [...names.map((name) => [name]), [""], [names[0]]];
  const args = told.includes("exercise") ? [cells, exercise, asOf] : [cells, "", asOf];
  const rows = formula.compute([asked, ...args]) as readonly (readonly unknown[])[];
  return names.map((athlete, at) => {
    const row = rows[at] ?? [];
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

const [setToSetOf, loadSpeedLineOf, seasonHoldOf] = warehouseFunctions;

type Squad = readonly WarehouseAthlete[] | null;

export const setToSet = (squad: Squad, exercise: string, asOf: string) =>
  answers(setToSetOf!, squad, exercise, asOf);
export const loadSpeedLine = (squad: Squad, exercise: string, asOf: string) =>
  answers(loadSpeedLineOf!, squad, exercise, asOf);
export const seasonHold = (squad: Squad, asOf: string) => answers(seasonHoldOf!, squad, "", asOf);
