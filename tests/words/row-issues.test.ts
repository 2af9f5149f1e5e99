import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { rowIssueSentences, sayRowIssue } from "../../src/words/row-issues";
import { issue } from "./invented-issue";

test("every code that reading can report has its sentence, and no sentence is left over", () => {
  const folder = join(__dirname, "../../src/rows");
  const source = (readdirSync(folder, { recursive: true }) as string[])
    .filter((file) => file.endsWith(".ts"))
    .map((file) => readFileSync(join(folder, file), "utf8"))
    .join("\n");
  const refused = /refuse\(\s*"((?!as-of)[a-z-]+)"/g;
  const reported = /(?:\.add|\.report|addAtSource|\breport|\bfail)\(\s*(?:code \?\? )?"([a-z-]+)"/g;
  const codes = new Set(
    [...source.matchAll(reported), ...source.matchAll(refused)].map(([, code]) => code),
  );
  const said = new Set(Object.keys(rowIssueSentences));
  expect([...codes].filter((code) => !said.has(code!))).toEqual([]);
  expect([...said].filter((code) => !source.includes(`"${code}"`))).toEqual([]);
});

test.each(Object.keys(rowIssueSentences))(
  "%s says why it matters and what to do, in whole sentences",
  (code) => {
    const { found, whyItMatters, whatToDo } = sayRowIssue(
      issue(code, {
        heading: "Load",
        low: 1,
        high: 2,
        unit: "kg",
        speeds: 5,
        sets: 1,
        reps: 1,
        weekday: 0,
      }),
    );
    expect(found).not.toBe("");
    for (const sentence of [whyItMatters, whatToDo]) {
      expect(sentence).toMatch(/^[A-Z“].*[.?]$/);
      expect(sentence).not.toMatch(/undefined|NaN|because|\bmax\b/i);
    }
  },
);

test("a proposed mend stands in the step to take", () => {
  const said = sayRowIssue(
    issue("implausible", { heading: "Rep 1", low: 0.08, high: 3.5, unit: "m/s", mend: 0.62 }),
  );
  expect(said).toEqual({
    found: "“62”",
    whyItMatters:
      "This cell is left out of the figures; the rest of its row counts. Plausible here: 0.08–3.5 m/s.",
    whatToDo: "Type 0.62, if that is what was meant.",
  });
});

test("a code without a sentence is our own mistake", () => {
  expect(() => sayRowIssue(issue("no-such-code"))).toThrow("no-such-code");
});
