import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import type { Host } from "../host";
import { withCommas } from "./with-commas";

/** Before the library's own reading of what was typed. */
const first = 10;

/** A formula typed with semicolons is one with commas: else it would be no formula, without a word why. */
export function typedFormulas({ engine }: Host): void {
  engine.injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (value, _, next) =>
      next(typeof value?.f === "string" ? { ...value, f: withCommas(value.f) } : value),
  });
}
