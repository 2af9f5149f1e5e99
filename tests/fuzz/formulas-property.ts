import fc from "fast-check";
import { catalogue } from "../../src/catalogue";
import type { SheetFunction } from "../../src/catalogue/sheet-function";
import { programWord } from "./program-words";
import { anyTable, cell, samples } from "./tables";

/** What stands in for an argument: nothing, a cell, a column, a spoilt or a plain table, a day. */
const argument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: anyTable },
  { weight: 2, arbitrary: fc.constantFrom(...samples) },
  { weight: 2, arbitrary: cell },
  { weight: 1, arbitrary: fc.array(fc.tuple(cell), { maxLength: 6 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<unknown>("2026-06-16", new Date(2026, 5, 16), undefined),
  },
);

const call = fc.constantFrom(...catalogue).chain((formula) => {
  const [example] = formula.examples;
  return fc.record({
    formula: fc.constant(formula),
    // A call as in the example, some of its arguments replaced: all of them would stop at the first.
    args: fc.tuple(
      ...formula.parameters.map((_, at) =>
        fc.oneof(
          { weight: 2, arbitrary: fc.constant(example?.args[at]) },
          { weight: 1, arbitrary: argument },
        ),
      ),
    ),
  });
});

/** No crash, no figure that is none, rows of one width, and every refusal a sentence. */
export const formulasAnswer = fc.property(call, ({ formula, args }) => checkCall(formula, args));

/** Fails with a sentence when a formula gives what no cell can show, or fails in other than words. */
export function checkCall(formula: SheetFunction, args: readonly unknown[]): void {
  let result: unknown;
  try {
    result = formula.compute(args);
  } catch (error) {
    if (!(error instanceof Error) || error.constructor !== Error) {
      throw new Error(`${formula.name} crashed: ${String(error)}`, { cause: error });
    }
    if (!/^\S.*[.?!]$/s.test(error.message)) throw new Error(`no sentence: ${error.message}`);
    plain(formula.name, error.message, args);
    return;
  }
  if (!Array.isArray(result)) {
    shown(formula.name, result, args);
    return;
  }
  const rows = result as readonly (readonly unknown[])[];
  if (rows.length === 0) throw new Error(`${formula.name} gives no row`);
  for (const row of rows) {
    if (!Array.isArray(row) || row.length === 0 || row.length !== rows[0]?.length) {
      throw new Error(`${formula.name} gives rows of different widths`);
    }
    for (const one of row) shown(formula.name, one, args);
  }
}

function shown(name: string, value: unknown, args: readonly unknown[]): void {
  if (typeof value === "number" && Number.isFinite(value)) return;
  if (typeof value === "boolean") return;
  if (value instanceof Date && Number.isFinite(value.getTime())) return;
  if (typeof value !== "string") throw new Error(`${name} gives ${String(value)}`);
  plain(name, value, args);
}

function plain(name: string, text: string, args: readonly unknown[]): void {
  const word = programWord(text, args);
  if (word !== undefined) throw new Error(`${name} says ${word}: ${text}`);
}
