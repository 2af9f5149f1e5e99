// Runs a TypeScript program of the test folder: `node tests/run.mjs tests/bench/seasons/main.ts [arguments]`.
// Node 20 does not read types, so the program is bundled in memory-sized form first.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";

const [entry, ...rest] = process.argv.slice(2);
if (entry === undefined) {
  process.stderr.write("Say which program to run: node tests/run.mjs FILE.ts [arguments]\n");
  process.exit(2);
}
const folder = mkdtempSync(join(tmpdir(), "holdline-run-"));
const outfile = join(folder, "program.cjs");
await build({
  entryPoints: [entry],
  outfile,
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  packages: "external",
  // What is loaded when first needed is found by NODE_PATH like everything else.
  supported: { "dynamic-import": false },
  logLevel: "error",
});
const { status } = spawnSync(process.execPath, ["--expose-gc", outfile, ...rest], {
  stdio: "inherit",
  env: { ...process.env, NODE_PATH: join(process.cwd(), "node_modules") },
});
rmSync(folder, { recursive: true, force: true });
process.exit(status ?? 1);
