import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync } from "@swc/core";
import { plainWords } from "./plain-words";

const root = join(__dirname, "../..");
const guide = readFileSync(join(root, "DEVELOPERS.md"), "utf8");

/** Words the guide's list of terms rules out, in any of their forms. */
const ruledOut = (/^One list .* Words not used: (.+)\.$/m.exec(guide)?.[1] ?? "")
  .split(", ")
  .map((word) => word.replaceAll('"', ""));
const avoided = new RegExp(`\\b(?:${ruledOut.join("|")})(?:s|es|ed|ing|imum)?\\b`, "i");

/** What is shown: words, help of the formulas, drawings, pages, sidebar, and the local workbook's own. */
const shownIn = [
  "words",
  "charts",
  "pages",
  "sidebar",
  "local-host/page",
  "local-host/command-line",
];
const files = [
  ...shownIn.flatMap((folder) =>
    (readdirSync(join(root, "src", folder), { recursive: true }) as string[])
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => join("src", folder, file)),
  ),
  "src/local-host/files/file-sentences.ts",
];

/** Every text between quotation marks, in templates and in markup; names and code are none. */
function texts(file: string): string[] {
  const found: string[] = [];
  const visit = (part: unknown): void => {
    if (Array.isArray(part)) for (const one of part) visit(one);
    else if (part !== null && typeof part === "object") {
      const { type, value, cooked } = part as { type?: string; value?: string; cooked?: string };
      if (type === "ImportDeclaration" || type === "JSXAttribute") return;
      if (type === "StringLiteral" || type === "JSXText") found.push((value ?? "").trim());
      if (type === "TemplateElement") found.push((cooked ?? "").trim());
      for (const one of Object.values(part)) visit(one);
    }
  };
  const source = readFileSync(join(root, file), "utf8");
  visit(parseSync(source, { syntax: "typescript", tsx: file.endsWith("x") }).body);
  return found.filter((text) => text !== "");
}

/** Names, which keep their capitals within a text. */
const names = /^(?:Holdline|Next|Ctrl\+C|CSV|XLSX)$/;
/** A label of several words, each of which begins with a capital. */
const isTitleCase = (text: string): boolean => {
  const words = text.split(/\s+/).filter((word) => /^\p{L}{3,}/u.test(word) && !names.test(word));
  return words.length >= 2 && words.every((word) => /^\p{Lu}\p{Ll}/u.test(word));
};

test("the list of ruled-out words is read from the guide, and the checks find what they look for", () => {
  expect(ruledOut).toEqual(["because", "score", "target", "max"]);
  expect("Scores of the week").toMatch(avoided);
  expect("maximum load").toMatch(avoided);
  expect([isTitleCase("Write Season Tab"), isTitleCase("Write the Season tab")]).toEqual([
    true,
    false,
  ]);
  expect(texts("src/words/sidebar.ts")).toContain("Next week");
});

test.each(files)("%s uses no ruled-out word and writes labels as sentences", (file) => {
  const found = texts(file);
  expect(found.filter((text) => avoided.test(text))).toEqual([]);
  expect(found.filter(isTitleCase)).toEqual([]);
});

/** First column of the guide's list. */
const terms = [...guide.matchAll(/^\| ([^|]+) \| [^|]+ \|$/gm)]
  .map(([row, term]) => ({ term: term!, at: guide.indexOf(row) }))
  .filter(({ at }) => at > guide.indexOf("## Terms") && at < guide.indexOf("## Another language"))
  .flatMap(({ term }) => (/^(?:term|-+)$/.test(term) ? [] : [term]));
const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}[\p{L}’'-]*/gu) ?? [];

/** Files of labels: headings, buttons, fields, heads of columns and pages, menu, kinds of problem. */
const labelFiles = [
  "sidebar",
  "week-view",
  "diary-view",
  "season-tab",
  "questions",
  "rule-list",
  "row-kinds",
  "charts",
  "menu",
  "tabs",
  "next-week-tab",
  "page-labels",
  "local-page",
].map((name) => `src/words/${name}.ts`);
/** A label is short and no sentence; a file's codes and file names are none. */
const isLabel = (text: string): boolean =>
  wordsOf(text).length > 0 &&
  wordsOf(text).length <= 5 &&
  !/[.?!:]$|\. |^\.|^[a-z]+(?:-[a-z]+)+$|[A-Z][a-z]?-/.test(text);
const termWords = terms.flatMap(wordsOf);
const allowed = new Set([
  ...termWords,
  ...termWords.map((word) => `${word}s`),
  ...Object.values(plainWords).flatMap(wordsOf),
]);
const strays = (text: string) => wordsOf(text).filter((word) => !allowed.has(word));

test("the list of terms is read from the guide, and a word that is in neither list is found", () => {
  expect(terms).toEqual(expect.arrayContaining(["wobble", "marker set", "speed floor", "stack"]));
  expect(strays("Fatigue index")).toEqual(["fatigue", "index"]);
  expect(strays("Reps in reserve")).toEqual([]);
});

test.each(labelFiles)("%s makes its labels of listed terms and plain words", (file) => {
  const labels = texts(file).filter(isLabel);
  expect(labels.length).toBeGreaterThan(0);
  expect(labels.filter((label) => strays(label).length > 0)).toEqual([]);
});

test("the list of plain words holds none that no label uses", () => {
  const used = new Set(labelFiles.flatMap(texts).filter(isLabel).flatMap(wordsOf));
  const listed = Object.values(plainWords).flatMap(wordsOf);
  expect(listed.filter((word) => !used.has(word))).toEqual([]);
});

/** A short text that begins a line on screen begins with a capital, a figure or a sign, and has no other. */
test.each(labelFiles)("%s has no capital inside a label but a name's", (file) => {
  const inside = (label: string) =>
    label
      .split(/\s+/)
      .slice(1)
      .filter(
        (word) => /^\p{Lu}\p{Ll}/u.test(word) && !/^(?:Set|Squad|Season|Diary|Next)/.test(word),
      );
  expect(
    texts(file)
      .filter(isLabel)
      .filter((label) => inside(label).length > 0),
  ).toEqual([]);
});
