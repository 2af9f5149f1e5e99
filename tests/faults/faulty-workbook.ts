import type { Workbook } from "../../src/actions/workbook";

/**
 * What goes wrong at one call of the workbook. That a list comes in part is seen by the port itself, and
 * is tried on the services. A time-out is among them: a script that is stopped does
 * nothing more, and neither does one of ours whose call threw, which is asserted at every point.
 */
export const faults = ["throws before", "throws after it took effect"] as const;
export type Fault = (typeof faults)[number];
export type FaultAt = { readonly call: number; readonly fault: Fault };

/** A workbook whose calls are counted, one of them at fault. A stopped script does nothing any more. */
export function faultyWorkbook(
  real: Workbook,
  at: FaultAt | null,
): { readonly book: Workbook; readonly made: string[] } {
  const made: string[] = [];
  const watched = (name: string, work: (...args: unknown[]) => unknown) => {
    return (...args: unknown[]): unknown => {
      made.push(name);
      if (at === null || made.length !== at.call) return work(...args);
      const failed = new Error(`The service failed in ${name}`);
      if (at.fault === "throws before") throw failed;
      work(...args);
      throw failed;
    };
  };
  const book = Object.fromEntries(
    Object.entries(real).map(([name, member]) => [
      name,
      typeof member === "function"
        ? watched(name, member as (...args: unknown[]) => unknown)
        : member,
    ]),
  );
  return { book: book as Workbook, made };
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
