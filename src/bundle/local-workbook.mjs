import { existsSync, mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { noHyphenation, openEndedRanges } from "./grid-library.mjs";

const shared = {
  bundle: true,
  plugins: [openEndedRanges, noHyphenation],
  jsx: "automatic",
  logLevel: "error",
};

/** `dist/local/`: the local workbook's programs for Node and its page for the browser. */
export default async function localWorkbook({ root, dist }) {
  const from = (path) => join(root, "src/local-host", path);
  const outdir = join(dist, "local");
  mkdirSync(outdir, { recursive: true });
  const programs = { node: from("node.ts"), holdline: from("command-line/main.ts") };
  await build({
    ...shared,
    entryPoints: Object.fromEntries(Object.entries(programs).filter(([, path]) => existsSync(path))),
    outdir,
    outExtension: { ".js": ".cjs" },
    platform: "node",
    format: "cjs",
    target: "node20",
    external: ["exceljs"],
  });
  await build({
    ...shared,
    entryPoints: { page: from("page/main.ts") },
    outdir,
    format: "iife",
    target: "es2022",
    minify: true,
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff2": "dataurl", ".ttf": "dataurl", ".svg": "dataurl" },
  });
}

// Run by itself, it builds the local workbook alone.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
  await localWorkbook({ root, dist: join(root, "dist") });
}
