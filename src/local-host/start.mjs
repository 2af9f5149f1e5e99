// Starts the program; builds it first when it is missing or older than its sources.
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const program = join(root, "dist/local/holdline.cjs");
const needed = ["code.js", "Sidebar.html", "local/page.js", "local/page.css", "local/holdline.cjs"];

function isCurrent() {
  const times = needed.map((file) => join(root, "dist", file));
  if (!times.every(existsSync)) return false;
  const oldest = Math.min(...times.map((file) => statSync(file).mtimeMs));
  const sources = readdirSync(join(root, "src"), { recursive: true }).map((file) =>
    join(root, "src", file),
  );
  return [...sources, join(root, "package-lock.json")].every(
    (file) => statSync(file).isDirectory() || statSync(file).mtimeMs <= oldest,
  );
}

if (!isCurrent()) {
  process.stderr.write("Building…\n");
  // The answer of a command goes to standard output; what the build says does not.
  const built = spawnSync(process.execPath, [join(root, "src/bundle/build.mjs")], {
    stdio: ["ignore", 2, 2],
  });
  if (built.status !== 0) process.exit(1);
}
createRequire(import.meta.url)(program);
