import type { Column } from "../header/column";
import type { RowIssue } from "../reading";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isDate } from "../value/is-date";
import { inBase, type Unit } from "../value/units";
import { cellAbove } from "./above";
import { type AsWritten, shutUnlessBase } from "./as-written";
import { commaMeans } from "./comma-evidence";
import { mendDecimalPoint } from "./mend";
import { saysNoFigure } from "./no-figure";
import { numberCell, saysOwnBody } from "./number-cell";
import type { PlausibleRange } from "./quantity";
import { type UnitEvidence, unitEvidence } from "./unit-evidence";

/** What is noticed beside the number itself. */
export type Aside = { note: string; perHand: boolean };

/**
 * Reader of a column of masses, lengths, times or speeds, in the base unit of `range`; null where
 * there is no usable value. Reports `not-a-number`, `date-in-number`, `implausible`, `unsure`,
 * `comma-unsettled`, `wrong-unit`, and once for the column `unit-unsettled`.
 */
export function quantityColumn(
  view: TableView,
  column: Column | undefined,
  range: PlausibleRange,
  aside: Aside | null = null,
  dropsRow = false,
  written: AsWritten | null = null,
): CellReader<number | null> {
  if (column === undefined) return () => null;
  const { index } = column;
  const named = column.unit?.quantity === range.quantity ? column.unit : null;
  let evidence: UnitEvidence | null = null;
  const evident = () => {
    evidence ??= unitEvidence(view, column, range);
    return evidence;
  };
  // Speeds and times misfit at once in any other unit, so their column is only searched then; a load
  // or a height may look right in two units and is settled before the first is read.
  const waits = range.quantity === "speed" || range.quantity === "time";
  let settled = named !== null || waits === false;
  let unit = named ?? (waits ? range.base : evident().unit);
  let times = unit?.times ?? Number.NaN;
  let per = unit?.per ?? 1;
  const askUnit = () =>
    view.log.add("unit-unsettled", view.headerRow, index, column.heading, {
      units: evident()
        .candidates.map((candidate) => candidate.name)
        .join(" or "),
      heading: column.heading,
    });
  if (unit === null) askUnit();
  shutUnlessBase(written, unit);
  const settle = () => {
    settled = true;
    unit = evident().unit;
    if (unit === null) askUnit();
    times = unit?.times ?? Number.NaN;
    per = unit?.per ?? 1;
    shutUnlessBase(written, unit);
  };
  const { high } = range;
  const low = named === null ? range.lowUnnamed : range.low;
  const report = (code: string, row: number, cell: unknown, facts: RowIssue["facts"] = {}) => {
    view.log.add(code, row, index, cell, { heading: column.heading, ...facts }, dropsRow);
    return null;
  };
  const above = cellAbove(view, index);

  const judged = (value: number, of: Unit | null, cell: unknown, row: number): number | null => {
    if (of === null) return null;
    const base = inBase(value, of);
    if ((base >= low && base <= high) || base === range.low) return base;
    if (range.cellSettlesUnit)
      for (const rival of [range.base, ...range.rivals]) {
        const other = inBase(value, rival);
        if (other >= low && other <= high) return other;
      }
    const { least, most } = evident();
    const mend = mendDecimalPoint(base, least, most, range);
    return report("implausible", row, cell, {
      low,
      high,
      unit: range.base.name,
      ...(mend === null || of.per !== 1 || of.times !== 1 ? {} : { mend }),
    });
  };

  const ofCell = (cell: unknown, row: number): number | null => {
    if (typeof cell === "number" && Number.isFinite(cell)) {
      if (!settled) settle();
      return judged(cell, unit, cell, row);
    }
    if (isBlank(cell) || cell === false) return null;
    if (isDate(cell)) return report("date-in-number", row, cell);
    const text = typeof cell === "string" ? cell : "";
    if (saysNoFigure(view, row, index, text)) return null;
    if (range.quantity === "mass" && saysOwnBody(text)) return null;
    return isDitto(cell) ? ofCell(above(row), row) : ofText(text, cell, row);
  };

  const ofText = (text: string, cell: unknown, row: number): number | null => {
    const number = numberCell(text);
    if (number === null) return report("not-a-number", row, cell);
    // "m" is metres and "in" inches only where lengths are meant; distances know m and mi.
    if (number.unit !== null && number.unit.quantity !== range.quantity)
      return report("wrong-unit", row, cell, { unit: range.base.name });
    if (number.unsure) return report("unsure", row, cell, { mend: number.value });
    if (aside !== null) {
      aside.note = number.note;
      aside.perHand = number.perHand;
    }
    if (!settled && number.unit === null) settle();
    const of = number.unit ?? unit;
    if (number.thousands === null || of === null) return judged(number.value, of, cell, row);
    const { value, thousands } = number;
    const comma = commaMeans(view, index);
    if (comma !== null) return judged(comma === "decimal" ? value : thousands, of, cell, row);
    const groupedFits = inBase(thousands, of) <= high;
    if (groupedFits && inBase(value, of) >= low)
      return report("comma-unsettled", row, cell, { either: value, or: thousands });
    return judged(groupedFits ? thousands : value, of, cell, row);
  };

  return (line, row) => {
    const cell = line[index];
    if (typeof cell === "number") {
      const base = (cell * times) / per;
      if (base >= low && base <= high) return base;
    } else if (cell === "") return null;
    return ofCell(cell, row);
  };
}
