// Runs the built program; builds it first when asked to start afresh or when it is not there yet.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const program = join(root, "dist/local/holdline.cjs");
const words = process.argv.slice(2);

if (words[0] === "start" || !existsSync(program)) {
  process.stderr.write("Building…\n");
  const { status } = spawnSync(process.execPath, [join(root, "src/bundle/build.mjs")], {
    stdio: ["ignore", "ignore", "inherit"],
  });
  if (status !== 0) process.exit(1);
}
process.argv = [process.argv[0], program, ...words];
await import(program);
