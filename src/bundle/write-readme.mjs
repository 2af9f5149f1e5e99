import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { loaded, root } from "./loaded.mjs";

/** Rewrites the README's tables of formulas and of columns from the sources: `npm run readme`. */
const { withTables } = await loaded("src/catalogue/readme-table.ts");
const path = join(root, "README.md");
writeFileSync(path, withTables(readFileSync(path, "utf8")));
