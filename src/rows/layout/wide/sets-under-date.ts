import type { Cells } from "../../cells";
import { headerWords, plainWords } from "../../header/header-words";
import { sampleColumn, valueFit } from "../../header/value-fit";
import type { TableName } from "../../table-name";
import { figures, headingParts } from "../across/heading-parts";
import { namesLift, namesSide } from "../across/names-over-figures";
import { noSense } from "../shorthand/scheme-order";
import { isShorthand, setCell } from "../shorthand/set-cell";
import { numberOfTry } from "./numbered-tries";
import type { SubHeading } from "./sub-headings";

type Place = { readonly row: number; readonly column: number; readonly end: number };

/**
 * What a heading under a date says of sets that its words alone do not: the lift, or its side, with its figure
 * ("Squat kg", "left kg"), or by the loads below a lift alone ("Squat") or one more set ("Set 2"); null for any other.
 */
export function setsUnderDate(cells: Cells, { row, column, end }: Place): SubHeading | null {
  const cell = cells[row]![column];
  const { field, set, label } = headingParts(cell, column);
  const { unit } = headerWords(cell);
  const lift = namesLift(label) || namesSide(label) ? { exercise: label } : {};
  if (label !== "" && !("exercise" in lift)) return null;
  if (field !== null) return figures.test(field) && label !== "" ? { field, unit, ...lift } : null;
  const filled = sampleColumn(cells, row + 1, end, column).filter((one) => /\d/.test(String(one)));
  const isLoad = (one: unknown) =>
    valueFit("load", [one]) === 1 || isShorthand(setCell(one, noSense));
  const heads = set !== "" || label !== "";
  return heads && filled.every(isLoad) ? { field: "load", unit, ...lift } : null;
}

/** "Try 2", "3": one more of the jumps that the title names. */
export const isTry = (cell: unknown): boolean => numberOfTry.test(plainWords(cell));

/** Whether a heading names what a table of jumps, or of sets, does not hold: under "kg" stands no height. */
export function isOfOthers(table: TableName, cell: unknown): boolean {
  const { field, set, label } = headingParts(cell, 0);
  const isOfSets = set !== "" || namesLift(label);
  const { quantity } = headerWords(cell).unit ?? {};
  if (table === "Sets") return isOfSets || quantity === "length" || quantity === "time";
  const isFigure = figures.test(field ?? "") || quantity === "mass" || quantity === "speed";
  return table === "Jumps" && (isOfSets || isFigure);
}
