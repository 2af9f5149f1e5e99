import { execFileSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../..");
const bundled = `
import { build } from "esbuild";
import { inLanguage } from ${JSON.stringify(join(root, "src/bundle/other-language.mjs"))};
const { outputFiles } = await build({
  stdin: {
    contents: 'export { sidebarWords } from "./words/sidebar"; export { menuWords } from "./words/menu"; export { update } from "./sidebar/update";',
    resolveDir: ${JSON.stringify(join(root, "src"))},
    loader: "ts",
  },
  plugins: [inLanguage(process.argv[1] === "" ? null : process.argv[1])],
  bundle: true, write: false, format: "esm", jsx: "automatic", jsxImportSource: "preact", logLevel: "error",
});
const text = Buffer.from(outputFiles[0].text).toString("base64");
const { sidebarWords, menuWords } = await import("data:text/javascript;base64," + text);
process.stdout.write(JSON.stringify([
  sidebarWords.views, sidebarWords.goTo("C7"), sidebarWords.readAgain, menuWords.openSidebar,
  (outputFiles[0].text.match(/Vorn sela/g) ?? []).length,
]));
`;
const said = (folder: string): unknown =>
  JSON.parse(
    execFileSync(process.execPath, ["--input-type=module", "-e", bundled, folder], {
      encoding: "utf8",
      cwd: root,
    }),
  );

test("a folder of words in another language takes the place of a handful, the rest stays British English", () => {
  expect(said(join(__dirname, "invented-language"))).toEqual([
    { week: "Vorn sela", squad: "Squad", rows: "Rows", setUp: "Set up" },
    "Ga C7",
    "Read again",
    "Open sidebar",
    // Every part of the program that says it says it from there.
    1,
  ]);
});

test("without one nothing of it is there", () => {
  expect(said("")).toEqual([
    { week: "Next week", squad: "Squad", rows: "Rows", setUp: "Set up" },
    "Go to C7",
    "Read again",
    "Open sidebar",
    0,
  ]);
});

const scriptIn = (folder: string): string =>
  execFileSync(
    process.execPath,
    [
      "--input-type=module",
      "-e",
      `import { script } from ${JSON.stringify(join(root, "src/bundle/script.mjs"))};
import { inLanguage } from ${JSON.stringify(join(root, "src/bundle/other-language.mjs"))};
process.stdout.write((await script(inLanguage(process.argv[1] || null))).text);`,
      folder,
    ],
    { encoding: "utf8", cwd: root, maxBuffer: 2 ** 24 },
  );
const helpOf = (script: string, formula: string): string => {
  const at = script.indexOf(`function ${formula}(`);
  return script.slice(script.lastIndexOf("/**", at), at);
};

test("the formulas' help in the script is in the chosen language, what it lacks in British English", () => {
  const english = scriptIn("");
  const other = scriptIn(join(__dirname, "invented-language"));
  const help = helpOf(other, "ROW_CHECK");
  expect(help).toContain(" * Umber tal venna.\n");
  expect(help).toContain(" * @param table Vik tal.\n");
  expect(help).toContain(" * @param athletes Nael sorr. Nem dur.\n");
  expect(help).toContain(" * @param rows The table's range with its header row, starting in A1.\n");
  expect(helpOf(other, "SEASON_HOLD")).toContain(" * @param athletes Nael sorr.\n");
  // The help stands in the declarations alone: the script that computes is not made longer by it.
  expect(other.split("Umber tal venna").length).toBe(2);
  expect(english).not.toContain("Nael sorr");
  expect(english).toContain(" May be left out.\n");
});

test("a language that is not there stops the build in words", () => {
  const build = `import { chosenLanguage } from ${JSON.stringify(join(root, "src/bundle/other-language.mjs"))}; chosenLanguage("xx");`;
  expect(() =>
    execFileSync(process.execPath, ["--input-type=module", "-e", build], {
      cwd: root,
      stdio: "pipe",
    }),
  ).toThrow(/There is no folder src\/words\/xx with words in that language\./);
});
