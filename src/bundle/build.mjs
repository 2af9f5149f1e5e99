import { copyFileSync, existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { declarations } from "./declarations.mjs";
import { loaded, root } from "./loaded.mjs";

const dist = join(root, "dist");

/** `dist/code.js`: the whole add-on as one script, its declarations last. */
async function script() {
  const { catalogue } = await loaded("src/catalogue/index.ts");
  const { serverFunctions } = await loaded("src/actions/server-functions.ts");
  const { outputFiles } = await build({
    bundle: true,
    write: false,
    logLevel: "error",
    entryPoints: [join(root, "src/apps-script/main.ts")],
    format: "iife",
    globalName: "core",
    target: "es2020",
    // The script is loaded for every formula: every byte is paid for again.
    minify: true,
    // The script engine reports errors by line: lines short enough to be found.
    lineLimit: 400,
    legalComments: "none",
    charset: "utf8",
    footer: { js: declarations(catalogue, serverFunctions) },
  });
  return outputFiles[0].text;
}

mkdirSync(dist, { recursive: true });
writeFileSync(join(dist, "code.js"), await script());
copyFileSync(join(root, "appsscript.json"), join(dist, "appsscript.json"));
for (const part of ["sidebar-page.mjs", "local-workbook.mjs"]) {
  const path = join(root, "src/bundle", part);
  if (existsSync(path)) await (await import(pathToFileURL(path).href)).default({ root, dist });
}
