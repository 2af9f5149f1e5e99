import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import {
  commonTokens,
  declareFactoryPlugin,
  PluginKind,
  tokens,
} from "@stryker-mutator/api/plugin";
import { strykerPlugins as jestPlugins } from "@stryker-mutator/jest-runner";
import { drawSample } from "./draw-sample.mjs";

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
    const files = (result.tests ?? []).map(({ id, fileName, timeSpentMs }) => [
      id,
      fileName,
      timeSpentMs,
    ]);
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

/**
 * Draws the sample once the tests of each fault are known, and writes each result at once, so that a run
 * that is broken off has not been for nothing.
 */
function lines() {
  const path = process.env.MUTATION_LINES;
  const { MUTATION_SAMPLE: sample, MUTATION_SEED: seed } = process.env;
  return {
    onMutationTestingPlanReady({ mutantPlans }) {
      if (sample) drawSample(mutantPlans, Number(sample), seed);
    },
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
];
