// Branches of the pure folders that the tests take: `npm run coverage [-- tests/rows …]`.
// Every `if` counts twice, also without an `else`, every `?:`, `&&`, `||`, `??` and default once a way,
// in files no test loads too. No line is excluded: a file that asks for it is an error.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const pure = ["statistics", "coaching", "rows", "words", "catalogue"];
const least = 95;

/**
 * The pure folders' own tests and those that stand right on them. Left out, as they could only raise
 * the figures: actions takes ten times as long as these together; faults, attacks and fuzz draw or
 * spoil at random, and a branch met by chance is not tried; browser, local-host and bundle run the
 * built script, not these sources; the second ways of reckoning, the sample sheets and the warehouse
 * go over ground that these cover.
 */
const suites = [...pure, "published", "weeks", "pages", "charts", "sidebar"];

const given = process.argv.slice(2);
for (const folder of pure) {
  for (const file of readdirSync(join("src", folder), { recursive: true })) {
    if (!file.endsWith(".ts")) continue;
    if (/\b(istanbul|c8|v8) ignore\b/.test(readFileSync(join("src", folder, file), "utf8")))
      throw new Error(`src/${folder}/${file} excludes lines from being counted`);
  }
}

const folder = mkdtempSync(join(tmpdir(), "holdline-coverage-"));
const { status } = spawnSync(
  process.execPath,
  [
    "node_modules/.bin/jest",
    ...(given.length > 0 ? given : suites.map((suite) => `tests/${suite}/`)),
    "--coverage",
    "--coverageReporters=json",
    `--coverageDirectory=${folder}`,
    `--collectCoverageFrom=src/{${pure.join(",")}}/**/*.ts`,
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
  const name = path.split("/src/").at(-1);
  const [top, idea] = name.split("/");
  const lines = [];
  let all = 0;
  for (const [id, ways] of Object.entries(b)) {
    all += ways.length;
    ways.forEach((times, way) => {
      if (times > 0) return;
      const { locations, loc } = branchMap[id];
      lines.push(locations[way]?.start?.line ?? loc.start.line);
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
  const share = all === 0 ? 100 : (100 * taken) / all;
  const isPure = pure.includes(key);
  if (isPure && share < least) short = true;
  const asked = isPure ? `  (asked ${least} %)` : "";
  const figures = `${String(taken).padStart(5)} of ${String(all).padStart(5)}`;
  process.stdout.write(`${key.padEnd(24)} ${figures}  ${share.toFixed(1)} %${asked}\n`);
}
process.exit(status !== 0 || short ? 1 : 0);
