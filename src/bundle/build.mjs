import { copyFileSync, existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { declarations } from "./declarations.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const dist = join(root, "dist");
const from = (path) => join(root, path);
const quiet = { bundle: true, write: false, logLevel: "error" };

/** A module of the sources, loaded as the build needs its data. */
async function loaded(path) {
  const { outputFiles } = await build({ ...quiet, entryPoints: [from(path)], format: "esm" });
  const text = Buffer.from(outputFiles[0].text).toString("base64");
  return import(`data:text/javascript;base64,${text}`);
}

/** `dist/code.js`: the whole add-on as one script, its declarations last. */
async function script() {
  const { catalogue } = await loaded("src/catalogue/index.ts");
  const { serverFunctions } = await loaded("src/actions/server-functions.ts");
  const { outputFiles } = await build({
    ...quiet,
    entryPoints: [from("src/apps-script/main.ts")],
    format: "iife",
    globalName: "core",
    target: "es2020",
    // The script engine is told nothing by short names, but every call pays for every byte.
    minify: true,
    // Apps Script reports errors by line: keep lines short enough to be found.
    lineLimit: 400,
    legalComments: "none",
    charset: "utf8",
    footer: { js: declarations(catalogue, serverFunctions) },
  });
  return outputFiles[0].text;
}

mkdirSync(dist, { recursive: true });
writeFileSync(join(dist, "code.js"), await script());
copyFileSync(from("appsscript.json"), join(dist, "appsscript.json"));
for (const part of ["sidebar-page.mjs", "local-workbook.mjs"]) {
  const path = join(root, "src/bundle", part);
  if (existsSync(path)) await (await import(pathToFileURL(path).href)).default({ root, dist });
}
