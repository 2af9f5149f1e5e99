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
  sidebarWords.views, sidebarWords.goTo("C7"), sidebarWords.tryAgain, menuWords.openSidebar,
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
    "Try again",
    "Open sidebar",
    // Every part of the program that says it says it from there.
    1,
  ]);
});

test("without one nothing of it is there", () => {
  expect(said("")).toEqual([
    { week: "Next week", squad: "Squad", rows: "Rows", setUp: "Set up" },
    "Go to C7",
    "Try again",
    "Open sidebar",
    0,
  ]);
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
