import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { loaded, root } from "./loaded.mjs";

/** Rewrites the README's table of formulas from the catalogue: `npm run readme`. */
const { withTable } = await loaded("src/catalogue/readme-table.ts");
const path = join(root, "README.md");
writeFileSync(path, withTable(readFileSync(path, "utf8")));
