import type { Workbook } from "../../src/actions/workbook";
import { watchedWorkbook } from "./watched-workbook";

/**
 * What goes wrong at one call of the workbook. That a list comes in part is seen by the port itself,
 * and is tried on the services. A time-out is among them: a script that is stopped does nothing more,
 * and neither does one of ours whose call threw, which is asserted at every point.
 */
export const faults = ["throws before", "throws after it took effect"] as const;
export type Fault = (typeof faults)[number];
export type FaultAt = { readonly call: number; readonly fault: Fault };

/** A workbook whose calls are counted, one of them at fault. A stopped script does nothing any more. */
export function faultyWorkbook(
  real: Workbook,
  at: FaultAt | null,
): { readonly book: Workbook; readonly made: string[] } {
  return watchedWorkbook(real, (call, make, name) => {
    if (call !== at?.call) return make();
    if (at.fault === "throws after it took effect") make();
    throw new Error(`The service failed in ${name}`);
  });
}

const onlyRead = new Set([
  "tabs",
  "values",
  "formulas",
  "recall",
  "recallAll",
  "taggedColumns",
  "highlights",
  "isPlain",
]);

/** Whether a fault can show at a call: one that only reads leaves nothing behind. */
export function applies(fault: Fault, call: string): boolean {
  return fault === "throws before" || !onlyRead.has(call);
}
