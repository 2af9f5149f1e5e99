import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { csvOf, sampleSquad } from "./sample-squad";

const folder = process.argv[2] ?? "sample-sheets";
mkdirSync(folder, { recursive: true });
for (const table of sampleSquad()) writeFileSync(join(folder, `${table.name}.csv`), csvOf(table));
