import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { languageHere } from "../engine/typed-value";
import type { Host } from "../host";
import { inLanguagesOrder } from "./in-languages-order";

/** Before the library's own reading of what was typed. */
const first = 10;

/**
 * A day typed into a cell that shows days is read in the order in which that cell shows them, whatever
 * the browser's language: else opening and closing the cell would swap day and month.
 */
export function typedDays({ engine }: Host): void {
  engine.injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (value, { worksheet, row, col }, next) => {
      if (typeof value?.v !== "string") return next(value);
      const pattern = worksheet.getComposedCellStyle(row, col).n?.pattern ?? "";
      return next({ ...value, v: inLanguagesOrder(value.v, pattern, languageHere()) });
    },
  });
}
