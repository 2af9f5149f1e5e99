import type { Workbook } from "../../src/actions/workbook";

/**
 * What goes wrong at one call of the workbook. A time-out is among them: a script that is stopped does
 * nothing more, and neither does one of ours whose call threw, which is asserted at every point.
 */
export const faults = ["throws before", "throws after it took effect", "answers in part"] as const;
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
      const answer = work(...args);
      if (at.fault === "answers in part") return partOf(answer);
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

/** Calls whose answer can come in part: lists, texts, places. */
const answersInPart = new Set([
  "tabs",
  "values",
  "formulas",
  "recall",
  "taggedColumns",
  "highlights",
]);

/** Whether a fault can show at a call: one that only reads leaves nothing behind. */
export function applies(fault: Fault, call: string): boolean {
  if (fault === "answers in part") return answersInPart.has(call);
  return fault === "throws before" || !answersInPart.has(call);
}

function partOf(answer: unknown): unknown {
  if (typeof answer === "string") return answer.slice(0, Math.floor(answer.length / 2));
  if (Array.isArray(answer)) return answer.slice(0, Math.ceil(answer.length / 2));
  if (answer instanceof Map) return new Map([...answer].slice(0, Math.floor(answer.size / 2)));
  return answer;
}
