import { copyFileSync, existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./loaded.mjs";
import { script } from "./script.mjs";

const dist = join(root, "dist");

mkdirSync(dist, { recursive: true });
/** `dist/code.js`: the script every formula call and every click runs. */
const { text } = await script();
writeFileSync(join(dist, "code.js"), text);
copyFileSync(join(root, "appsscript.json"), join(dist, "appsscript.json"));
for (const part of ["sidebar-page.mjs", "local-workbook.mjs", "warehouse.mjs"]) {
  const path = join(root, "src/bundle", part);
  if (existsSync(path)) await (await import(pathToFileURL(path).href)).default({ root, dist });
}
