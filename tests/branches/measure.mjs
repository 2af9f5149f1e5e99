// Branches of the pure folders that the tests take: `npm run coverage [-- tests/rows …]`.
// Counted by the engine itself, every `if`, `?:`, `&&`, `||`, `??` and function once a way; no line is
// excluded. Files of types alone have no code to run and count for nothing. Browser and local workbook
// run the bundle, not these sources, and are left out.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const pure = ["statistics", "coaching", "rows", "words", "catalogue"];
const least = 95;

const folder = mkdtempSync(join(tmpdir(), "holdline-coverage-"));
const { status } = spawnSync(
  process.execPath,
  [
    "node_modules/.bin/jest",
    ...process.argv.slice(2),
    "--coverage",
    "--coverageProvider=v8",
    "--coverageReporters=json",
    `--coverageDirectory=${folder}`,
    `--collectCoverageFrom=src/{${pure.join(",")}}/**/*.ts`,
    "--testPathIgnorePatterns=/tests/(browser|local-host|sidebar|charts|bundle|faults|attacks)",
    "--testTimeout=120000",
    "--silent",
  ],
  { stdio: "inherit" },
);
const files = JSON.parse(readFileSync(join(folder, "coverage-final.json"), "utf8"));
rmSync(folder, { recursive: true, force: true });

const counts = new Map();
const missed = [];
for (const [path, { b, branchMap }] of Object.entries(files)) {
  const name = path.split("/src/")[1];
  if (isTypesOnly(readFileSync(path, "utf8"))) continue;
  const [top, idea] = name.split("/");
  const lines = [];
  let all = 0;
  for (const [id, ways] of Object.entries(b)) {
    all += ways.length;
    ways.forEach((times, way) => {
      if (times === 0) lines.push((branchMap[id].locations[way] ?? branchMap[id].loc).start.line);
    });
  }
  for (const key of top === "coaching" ? [top, `${top}/${idea}`] : [top]) {
    const count = counts.get(key) ?? { taken: 0, all: 0 };
    counts.set(key, { taken: count.taken + all - lines.length, all: count.all + all });
  }
  if (lines.length > 0) missed.push({ name, lines });
}

for (const { name, lines } of missed.sort((a, b) => b.lines.length - a.lines.length))
  process.stdout.write(`${name}: ${[...new Set(lines)].sort((a, b) => a - b).join(", ")}\n`);
process.stdout.write("\n");
let short = false;
for (const [key, { taken, all }] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1))) {
  const share = (100 * taken) / all;
  const isPure = pure.includes(key);
  if (isPure && share < least) short = true;
  const asked = isPure ? `  (asked ${least} %)` : "";
  const figures = `${String(taken).padStart(5)} of ${String(all).padStart(5)}`;
  process.stdout.write(`${key.padEnd(24)} ${figures}  ${share.toFixed(1)} %${asked}\n`);
}
process.exit(status !== 0 || short ? 1 : 0);

/** Whether nothing of a file is left once types, imports of types and comments are taken out. */
function isTypesOnly(text) {
  const bare = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*$/gm, "");
  return (
    !/^(export )?(const|function|class|let|async)\b|^export (default|\*)|^declare module/m.test(
      bare,
    ) || /^declare module/m.test(bare)
  );
}
