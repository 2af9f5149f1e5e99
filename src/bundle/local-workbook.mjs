import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { noHyphenation, openEndedRanges } from "./grid-library.mjs";

/** `dist/local/`: the local workbook's program for Node and its page for the browser. */
export default async function localWorkbook({ root, dist }) {
  const out = join(dist, "local");
  mkdirSync(out, { recursive: true });
  const plugins = [openEndedRanges, noHyphenation];
  await build({
    entryPoints: { holdline: join(root, "src/local-host/command-line/main.ts") },
    outdir: out,
    outExtension: { ".js": ".cjs" },
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    plugins,
    external: ["exceljs"],
    // The grid library checks for a browser by these names only.
    logLevel: "error",
  });
  const page = join(root, "src/local-host/page/main.ts");
  if (!existsSync(page)) return;
  await build({
    entryPoints: { page },
    outdir: out,
    bundle: true,
    format: "iife",
    target: "es2022",
    minify: true,
    plugins,
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff2": "dataurl", ".ttf": "dataurl", ".svg": "dataurl" },
    logLevel: "error",
  });
}
