import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { refusalSentence } from "../../src/words/refusals";
import { codesIn } from "../words/codes-in";

const src = join(__dirname, "../../src");
const pure = /^(statistics|coaching|rows|catalogue)\/.*\.ts$/;
const text = (readdirSync(src, { recursive: true }) as string[])
  .filter((file) => pure.test(file))
  .map((file) => readFileSync(join(src, file), "utf8"))
  .join("\n");
const refusalCodes = readdirSync(join(src, "words"))
  .filter((file) => /^refusals-.*\.ts$/.test(file))
  .flatMap(codesIn);
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
  expect(refusalCodes.length).toBeGreaterThan(80);
  expect(refusalCodes.filter((code, at) => refusalCodes.indexOf(code) !== at)).toEqual([]);
});

test("a code without a sentence is our mistake", () => {
  expect(() => refusalSentence({ code: "no-such-code", facts: {} })).toThrow("no sentence");
});
