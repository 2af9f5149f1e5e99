import { catalogue } from "../../src/catalogue";
import { asWritten } from "./close-to";

const examples = catalogue.flatMap((entry) =>
  entry.examples.map((example) => ({ ...example, entry })),
);

test.each(examples)("$formula gives what its help says", ({ args, result, entry }) => {
  expect(asWritten(entry.compute(args), result)).toEqual(result);
});

test.each(catalogue)("$name has a runnable example, help and a column for each figure", (entry) => {
  const { name, summary, parameters, results, examples: own } = entry;
  expect(own.length).toBeGreaterThan(0);
  for (const { formula, args } of own) {
    expect(formula.startsWith(`=${name}(`)).toBe(true);
    expect(args.length).toBeLessThanOrEqual(parameters.length);
  }
  // What an argument left out would give has no column: the fullest example shows every one.
  const widths = own.flatMap(({ result }) =>
    (Array.isArray(result) ? result : [[result]]).map((row) => row.length),
  );
  expect(Math.max(...widths)).toBe(results.length);
  for (const text of [summary, ...parameters.map(({ help }) => help)]) {
    expect(text).toMatch(/\.$/);
    expect(text).not.toMatch(/because|\bmax\b|score|target|\n/i);
  }
  const firstOptional = parameters.findIndex(({ optional }) => optional);
  const after = firstOptional < 0 ? [] : parameters.slice(firstOptional);
  expect(after.every(({ optional }) => optional)).toBe(true);
});

test("no two formulas have one name, and every name can be typed into a cell", () => {
  const names = catalogue.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) expect(name).toMatch(/^[A-Z][A-Z_]*[A-Z]$/);
});
