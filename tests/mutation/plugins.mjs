import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import {
  commonTokens,
  declareClassPlugin,
  declareFactoryPlugin,
  PluginKind,
  tokens,
} from "@stryker-mutator/api/plugin";
import { strykerPlugins as jestPlugins } from "@stryker-mutator/jest-runner";

/**
 * The jest runner, handed only the test files that reach a fault: by name alone jest would load every
 * test file for every fault to find out that its tests are not wanted.
 */
function nearJest(injector) {
  const runner = injector.injectFunction(jestPlugins[0].factory);
  const adapter = runner.jestTestAdapter;
  const runAll = adapter.run.bind(adapter);
  let testFiles;
  adapter.run = (settings) => runAll(testFiles ? { ...settings, testFiles } : settings);
  const dryRun = runner.dryRun.bind(runner);
  runner.dryRun = async (options) => {
    const result = await dryRun(options);
    const files = (result.tests ?? []).map(({ id, fileName }) => [id, fileName]);
    writeFileSync(process.env.MUTATION_TESTS, JSON.stringify(files));
    return result;
  };
  const mutantRun = runner.mutantRun.bind(runner);
  let fileOf;
  runner.mutantRun = async (options) => {
    fileOf ??= filesByTest();
    const files = (options.testFilter ?? []).map((id) => fileOf.get(id));
    testFiles = files.length > 0 && !files.includes(undefined) ? [...new Set(files)] : undefined;
    process.env.MUTATION_FILE = options.sandboxFileName;
    try {
      return await mutantRun(options);
    } finally {
      testFiles = undefined;
    }
  };
  return runner;
}
nearJest.inject = tokens(commonTokens.injector);

/** Tests of the same name in two files are not told apart: then no file is left out. */
function filesByTest() {
  const files = new Map();
  for (const [id, file] of JSON.parse(readFileSync(process.env.MUTATION_TESTS, "utf8"))) {
    files.set(id, files.has(id) && files.get(id) !== file ? undefined : file);
  }
  return files;
}

/** Lets a seeded random sample of the faults through; the others count for nothing. */
class Sample {
  async init() {}

  async group(mutants) {
    const inOrder = mutants
      .map((mutant) => ({ id: mutant.id, place: placeOf(mutant) }))
      .sort((a, b) => a.place - b.place || Number(a.id) - Number(b.id));
    this.chosen = new Set(
      inOrder.slice(0, Number(process.env.MUTATION_SAMPLE)).map(({ id }) => id),
    );
    // In the order of the draw, so that the faults tried are a random sample at any moment.
    return [
      ...[...this.chosen].map((id) => [id]),
      mutants.map(({ id }) => id).filter((id) => !this.chosen.has(id)),
    ];
  }

  async check(mutants) {
    return Object.fromEntries(
      mutants.map(({ id }) => [
        id,
        this.chosen.has(id)
          ? { status: "passed" }
          : { status: "compileError", reason: "not drawn" },
      ]),
    );
  }
}

/** A fault's place in the draw, from what it is and where (FNV-1a). */
function placeOf({ fileName, location, replacement }) {
  const { start, end } = location;
  const file = fileName.slice(fileName.lastIndexOf("/src/"));
  const text = `${process.env.MUTATION_SEED} ${file} ${start.line}:${start.column}-${end.line}:${end.column} ${replacement}`;
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  // Near texts have near hashes: mixed once more.
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/** Writes each result at once, so that a run that is broken off has not been for nothing. */
function lines() {
  const path = process.env.MUTATION_LINES;
  return {
    onMutantTested({ fileName, status, location, mutatorName, replacement }) {
      if (status === "CompileError" || status === "Ignored") return;
      const text = (replacement ?? "").replace(/\s+/g, " ").slice(0, 110);
      const { line, column } = location.start;
      const file = fileName.slice(fileName.lastIndexOf("src/"));
      appendFileSync(path, `${status} ${file}:${line}:${column} ${mutatorName} -> ${text}\n`);
    },
  };
}
lines.inject = [];

export const strykerPlugins = [
  declareFactoryPlugin(PluginKind.Reporter, "lines", lines),
  declareFactoryPlugin(PluginKind.TestRunner, "near-jest", nearJest),
  declareClassPlugin(PluginKind.Checker, "sample", Sample),
];
