// Mutation testing: faults are put into the sources one at a time, and the tests must notice.
//   npm run mutate                               every fault of statistics, coaching and rows
//   npm run mutate -- statistics                 every fault of src/statistics
//   npm run mutate -- coaching/hold sample 150   a seeded random sample of the folder's faults
//   npm run mutate -- sample 400                 of all folders together
//   npm run mutate -- coaching constants         only faults in what runs once at loading
// Otherwise the last are left out: of each all tests are run of every file that loads it, which takes long.
// Half an hour for all, so it is no part of `npm test`. What survived is written to reports/mutation/.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative, resolve } from "node:path";
import { Stryker } from "@stryker-mutator/core";
import { report } from "./report.mjs";
import { testsOf } from "./tests-of.mjs";

const words = process.argv.slice(2);
const at = words.indexOf("sample");
const sample = at < 0 ? null : Number(words[at + 1]);
if (sample !== null && !(Number.isInteger(sample) && sample > 0)) {
  process.stderr.write("Say how many: npm run mutate -- sample 400\n");
  process.exit(2);
}
const seed = words.includes("seed") ? words[words.indexOf("seed") + 1] : "holdline";
const constants = words.includes("constants");
const options = ["sample", "seed", "constants"];
const named = words.slice(0, words.findIndex((word) => options.includes(word)) >>> 0);
const places = named.length > 0 ? named : ["statistics", "coaching", "rows"];
const folder = join(tmpdir(), `holdline-mutation-${process.pid}`);

// Nothing stays behind, also when the run is broken off.
process.on("exit", () => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(`${folder}-tests.json`, { force: true });
});
process.on("SIGINT", () => process.exit(1));

// Read by the plugins, which run in processes of their own.
process.env.MUTATION_SAMPLE = sample === null ? "" : String(sample);
process.env.MUTATION_SEED = seed;
process.env.MUTATION_CONSTANTS = constants ? "only" : "";
// The second ways of reckoning notice a fault within few cases or not at all.
process.env.MIRROR_CASES = "300";
process.env.MUTATION_TESTS = `${folder}-tests.json`;
process.env.MUTATION_TEST_FILES = JSON.stringify(testsOf(places));
process.env.MUTATION_ROOT = process.cwd();

// Of many places the name would be longer than files may have.
const name = `${places.join("+").replace(/[/.]/g, "-").slice(0, 80)}${constants ? "-constants" : ""}`;
mkdirSync("reports/mutation", { recursive: true });
process.env.MUTATION_LINES = resolve(`reports/mutation/${name}-lines.txt`);
writeFileSync(process.env.MUTATION_LINES, "");

const left = ["browser", "local-host", "faults", "attacks", "sidebar"];
const results = await new Stryker({
  mutate: places.map((place) => (place.endsWith(".ts") ? `src/${place}` : `src/${place}/**/*.ts`)),
  plugins: ["./tests/mutation/plugins.mjs"],
  testRunner: "resident",
  coverageAnalysis: "perTest",
  ignoreStatic: !constants,
  // No such file: the sources are read by swc and need nothing from it.
  tsconfigFile: "no-tsconfig.json",
  // Copied is all that a test may read; the rest of the tests would only take time.
  ignorePatterns: ["dist", "reports", "coverage", "*.log", ...left.map((one) => `tests/${one}`)],
  tempDirName: folder,
  cleanTempDir: "always",
  reporters: ["progress-append-only", "lines"],
  concurrency: Number(process.env.MUTATION_PROCESSES ?? 1),
  // The runner stops a test that does not end; this is for what cannot be stopped so.
  timeoutMS: 60_000,
  timeoutFactor: 4,
  dryRunTimeoutMinutes: 20,
  allowConsoleColors: false,
  thresholds: { high: 95, low: 85, break: null },
}).runMutationTest();

const { text, survivors } = report(
  results.map((one) => ({ ...one, fileName: relative(process.cwd(), one.fileName) })),
);
const whole = `${text}\n\n${survivors.join("\n")}\n`;
process.stdout.write(`\n${whole}`);
writeFileSync(`reports/mutation/${name}.txt`, whole);
