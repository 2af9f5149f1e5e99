import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import { inBase, type Unit } from "../value/units";
import { NamedBeside } from "./named-beside";
import { numberCell } from "./number-cell";
import { PoundPattern } from "./pound-pattern";
import type { PlausibleRange } from "./quantity";

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

const fewest = 5;

/** One pass over a column; of one whose unit is named, only the base unit's bounds are of use. */
export function unitEvidence(view: TableView, column: Column, range: PlausibleRange): UnitEvidence {
  const units = [range.base, ...range.rivals];
  const fits = units.map(() => 0);
  let count = 0;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  const pounds = new PoundPattern();
  const beside = new NamedBeside(range);
  for (let row = view.first; row < view.end; row++) {
    const cell = view.cells[row]![column.index];
    let value = cell as number;
    if (typeof cell !== "number") {
      if (typeof cell !== "string" || cell === "") continue;
      const text = numberCell(cell);
      if (text?.unit) beside.seeNamed(text.value, text.unit);
      if (text === null || text.unit !== null) continue;
      value = text.value;
    }
    if (value !== 0 || range.low > 0) count++;
    pounds.see(value);
    beside.see(value);
    for (let at = 0; at < units.length; at++) {
      const base = inBase(value, units[at] as Unit);
      if (base >= range.lowUnnamed && base <= range.high) fits[at]!++;
    }
    const base = inBase(value, units[0] as Unit);
    if (base >= range.low && base <= range.high) {
      if (base < least) least = base;
      if (base > most) most = base;
    }
  }
  const settled = { least, most };
  const rival = beside.rival;
  if (range.quantity === "mass")
    return range.rivals.length > 0 && (pounds.likely || rival !== null)
      ? { unit: null, candidates: units, ...settled }
      : { unit: range.base, candidates: [], ...settled };
  // A few odd cells are reported one by one; a whole column that fits only another unit is in that unit.
  const baseFits = fits[0]!;
  if (rival !== null && baseFits >= count / 2)
    return { unit: null, candidates: [range.base, rival], ...settled };
  if (count < fewest || baseFits >= count / 2)
    return { unit: range.base, candidates: [], ...settled };
  const others = units.filter((_, at) => fits[at]! >= 0.8 * count);
  if (others.length === 1) return { unit: others[0] as Unit, candidates: [], ...settled };
  return others.length === 0
    ? { unit: range.base, candidates: [], ...settled }
    : { unit: null, candidates: others, ...settled };
}
