import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { noHyphenation, openEndedRanges, typedInLanguage } from "./grid-library.mjs";
import { chosenLanguage } from "./other-language.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const outdir = join(root, "dist/local");
const from = (path) => join(root, "src/local-host", path);
const shared = {
  outdir,
  bundle: true,
  plugins: [chosenLanguage(), openEndedRanges, typedInLanguage, noHyphenation],
  logLevel: "error",
};
const program = {
  ...shared,
  outExtension: { ".js": ".cjs" },
  platform: "node",
  format: "cjs",
  target: "node20",
  external: ["exceljs"],
};

const parts = {
  /** The host and the server for a program in Node, the tests among them. */
  node: () => build({ ...program, entryPoints: { node: from("node.ts") } }),
  /** The command line. */
  holdline: () => build({ ...program, entryPoints: { holdline: from("command-line/main.ts") } }),
  /** The page: its script and its styles. */
  page: () =>
    build({
      ...shared,
      entryPoints: [
        { in: from("page/main.ts"), out: "page" },
        { in: from("page/page.css"), out: "page" },
      ],
      format: "iife",
      target: "es2022",
      minify: true,
      define: { "process.env.NODE_ENV": '"production"' },
      loader: { ".woff2": "dataurl", ".ttf": "dataurl", ".svg": "dataurl" },
    }),
};

/** `dist/local/`: the local workbook's programs for Node and its page for the browser. */
export default async function localWorkbook(_built, names = Object.keys(parts)) {
  mkdirSync(outdir, { recursive: true });
  for (const name of names) await parts[name]();
}

// Run by itself, it builds the parts named, or all of them.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const names = process.argv.slice(2);
  await localWorkbook({ root }, names.length > 0 ? names : undefined);
}
