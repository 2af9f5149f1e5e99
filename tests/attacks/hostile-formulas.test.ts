import { catalogue } from "../../src/catalogue";
import { hostileClub } from "./corpus/hostile-club";
import { hostileText } from "./corpus/hostile-text";

const club = hostileClub();
const names = club.Athletes!.slice(1).map(([name]) => name as string);
const asOf = "2026-06-28";
/** What stands where a table is asked for, by the parameter's name. */
const tables: Readonly<Record<string, readonly unknown[][]>> = {
  sets: club.Sets!,
  diary: club.Diary!,
  races: club.Races!,
  rules: club.Rules!,
};
const prototypeBefore = Object.getOwnPropertyNames(Object.prototype);
afterEach(() => {
  expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(prototypeBefore);
});

/** A result, or the sentence of a refusal; anything else that is thrown is our mistake. */
function answerOf(compute: (args: readonly unknown[]) => unknown, args: readonly unknown[]) {
  try {
    return compute(args);
  } catch (error) {
    expect(error).toMatchObject({ constructor: Error });
    const { message } = error as Error;
    expect(message).toMatch(/^[\s\S]+\.$/);
    expect(message.length).toBeLessThan(1_500);
    return message;
  }
}

/** Every cell of an answer is one that a spreadsheet takes, and no longer than it may be. */
function cellsOf(answer: unknown): readonly unknown[] {
  const cells = (Array.isArray(answer) ? answer : [[answer]]).flat() as unknown[];
  for (const cell of cells) {
    const isDate = Object.prototype.toString.call(cell) === "[object Date]";
    expect([cell, isDate || ["string", "number", "boolean"].includes(typeof cell)]).toEqual([
      cell,
      true,
    ]);
    expect(typeof cell === "number" && !Number.isFinite(cell)).toBe(false);
    expect(String(cell).length).toBeLessThan(10_000);
  }
  return cells;
}

test.each(catalogue)(
  "$name given any hostile text in any place answers with cells or one sentence",
  ({ compute, examples, parameters }) => {
    const [{ args }] = examples as readonly [(typeof examples)[number]];
    for (const [at] of parameters.entries()) {
      for (const text of hostileText) {
        const given = [...args];
        for (const value of [
          text,
          [
            [text, text],
            [1, text],
          ],
        ]) {
          while (given.length < at) given.push("");
          given[at] = value;
          cellsOf(answerOf(compute, given));
        }
      }
    }
  },
);

test.each(catalogue)(
  "$name given a club in which every text is hostile answers every athlete",
  ({ compute, parameters }) => {
    const args = parameters.map(({ name }) =>
      name === "athletes" || name === "athlete"
        ? names.map((one) => [one])
        : (tables[name] ?? (name === "as_of" ? asOf : name === "exercise" ? "back squat" : "")),
    );
    cellsOf(answerOf(compute, args));
  },
);
