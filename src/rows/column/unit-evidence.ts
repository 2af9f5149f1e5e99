import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import type { Unit } from "../value/units";
import { NamedBeside } from "./named-beside";
import { numberCell } from "./number-cell";
import { PoundPattern } from "./pound-pattern";
import type { PlausibleRange } from "./quantity";
import { UnitsThatFit } from "./units-that-fit";

/** What the numbers of a whole column say about its unit. */
export type UnitEvidence = {
  /** The settled unit; null when the column has to be asked about. */
  readonly unit: Unit | null;
  /** Units that would fit, when it has to be asked. */
  readonly candidates: readonly Unit[];
  /** Least and greatest plausible value in the base unit, for proposed mends. */
  readonly least: number;
  readonly most: number;
};

/** One pass over a column; of one whose unit is named, only the base unit's bounds are of use. */
export function unitEvidence(view: TableView, column: Column, range: PlausibleRange): UnitEvidence {
  const fit = new UnitsThatFit(range);
  const pounds = new PoundPattern();
  const beside = new NamedBeside(range);
  for (let row = view.first; row < view.end; row++) {
    const value = bareFigure(view.cells[row]![column.index], beside);
    if (value === null) continue;
    fit.see(value);
    pounds.see(value);
    beside.see(value);
  }
  const candidates = inDoubt(range, fit, pounds, beside.rival);
  const { least, most } = fit;
  return candidates.length > 1
    ? { unit: null, candidates, least, most }
    : { unit: candidates[0] ?? range.base, candidates: [], least, most };
}

/** A figure without a unit; one that names its own is seen beside those. */
function bareFigure(cell: unknown, beside: NamedBeside): number | null {
  if (typeof cell === "number") return cell;
  if (typeof cell !== "string" || cell === "") return null;
  const text = numberCell(cell);
  if (text?.unit) beside.seeNamed(text.value, text.unit);
  return text === null || text.unit !== null ? null : text.value;
}

/** The units the bare figures may be in where they may not be in the base unit alone: one is settled, several are asked about. */
function inDoubt(
  range: PlausibleRange,
  fit: UnitsThatFit,
  pounds: PoundPattern,
  rival: Unit | null,
): readonly Unit[] {
  if (range.quantity === "mass") return pounds.likely || rival !== null ? fit.units : [];
  return rival !== null && fit.isBase ? [range.base, rival] : fit.others;
}
