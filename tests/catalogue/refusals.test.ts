import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { refusalCodes, refusalSentence } from "../../src/words/refusals";

const src = join(__dirname, "../../src");
const pure = /^(statistics|coaching|rows|catalogue)\/.*\.ts$/;
const text = (readdirSync(src, { recursive: true }) as string[])
  .filter((file) => pure.test(file))
  .map((file) => readFileSync(join(src, file), "utf8"))
  .join("\n");
const refused = new Set([...text.matchAll(/\brefuse\(\s*"([a-z-]+)"/g)].map(([, code]) => code!));

test.each([...refused].sort())("%s has a sentence", (code) => {
  expect(refusalCodes).toContain(code);
});

test.each(refusalCodes)("the sentence of %s is plain", (code) => {
  const said = refusalSentence({
    code,
    facts: { near: "", found: "x", percent: 12, day: 20_000, exercise: "back squat" },
  });
  expect(said).toMatch(/^\S.*[.?]$/s);
  expect(said).not.toMatch(/because|\bmax\b|score|target|null/i);
});

test("no code has two sentences", () => {
  const folder = join(src, "words");
  const codes = readdirSync(folder)
    .filter((file) => /^refusals-.*\.ts$/.test(file))
    .flatMap((file) => [
      ...readFileSync(join(folder, file), "utf8").matchAll(/^ {2}"([a-z0-9-]+)": /gm),
    ])
    .map(([, code]) => code!);
  expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([]);
  expect(codes).toHaveLength(refusalCodes.length);
});

test("a code without a sentence is our mistake", () => {
  expect(() => refusalSentence({ code: "no-such-code", facts: {} })).toThrow("no sentence");
});
