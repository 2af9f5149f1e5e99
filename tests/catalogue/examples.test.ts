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
  for (const { formula, args, result } of own) {
    expect(formula.startsWith(`=${name}(`)).toBe(true);
    expect(args.length).toBeLessThanOrEqual(parameters.length);
    const rows = Array.isArray(result) ? result : [[result]];
    for (const row of rows) expect(row).toHaveLength(results.length);
  }
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
