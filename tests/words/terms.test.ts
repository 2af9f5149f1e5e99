import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync } from "@swc/core";

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
