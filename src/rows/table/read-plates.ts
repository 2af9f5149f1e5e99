import type { Plate } from "../../coaching/record/plate";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { quantityColumn } from "../column/quantity-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { reportBlank } from "./needed";
import { readLines } from "./read-lines";

/** Rows of the Plates table; a mass may stand there once, as its thickness must be one. */
export function readPlateRows(view: TableView): Reading<Plate> {
  const { fields, log } = view;
  const mass = quantityColumn(view, fields.mass, plausible.plateKg, null, true);
  const thickness = quantityColumn(view, fields.thickness, plausible.thicknessCm, null, true);
  const owned = numberColumn(view, fields.owned, { low: 0, high: 500, whole: true });
  const seen = new Map<number, { row: number; thicknessCm: number }>();
  const left = (row: number, column: number, cell: unknown, code: string, facts = {}) => {
    log.add(code, row, column, cell, facts, true);
    return null;
  };
  return readLines<Plate>(
    view,
    (line, row) => {
      const before = log.issues.length;
      const massKg = mass(line, row);
      const thicknessCm = thickness(line, row);
      if (massKg === null || thicknessCm === null)
        return log.issues.length > before
          ? null
          : reportBlank(view, massKg === null ? fields.mass : fields.thickness, row);
      const earlier = seen.get(massKg);
      if (earlier !== undefined) {
        const code = earlier.thicknessCm === thicknessCm ? "doubled-row" : "plate-twice";
        return left(row, fields.mass!.index, line[fields.mass!.index], code, {
          massKg,
          earlierRow: log.rowNumber(earlier.row),
        });
      }
      seen.set(massKg, { row, thicknessCm });
      const stamped = Number.parseFloat(String(line[fields.mass!.index]).replace(",", "."));
      const inKg = !(Math.abs(stamped - massKg) > 0.01);
      const plate = { row: row + 1, massKg, thicknessCm, owned: owned(line, row) };
      return inKg ? plate : { ...plate, stamped };
    },
    [owned],
  );
}
