import { existsSync } from "node:fs";
import { join } from "node:path";
import type * as Node from "../../src/local-host/node";

const built = join(__dirname, "../../dist/local/node.cjs");
if (!existsSync(built)) throw new Error("Run npm run build first: these tests use the built host.");

/** The local workbook as it was built, mends to the grid library included. */
export const local = require(built) as typeof Node;
