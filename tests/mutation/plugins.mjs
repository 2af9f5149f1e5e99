import { appendFileSync } from "node:fs";
import { declareClassPlugin, declareFactoryPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { drawSample, leaveConstants } from "./draw-sample.mjs";
import { ResidentRunner } from "./resident-runner.mjs";

/**
 * Draws the sample once the tests of each fault are known, and writes each result at once, so that a run
 * that is broken off has not been for nothing.
 */
function lines() {
  const path = process.env.MUTATION_LINES;
  const { MUTATION_SAMPLE: sample, MUTATION_SEED: seed, MUTATION_CONSTANTS: only } = process.env;
  return {
    onMutationTestingPlanReady({ mutantPlans }) {
      if (only) leaveConstants(mutantPlans);
      drawSample(mutantPlans, sample ? Number(sample) : Number.POSITIVE_INFINITY, seed);
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
  declareClassPlugin(PluginKind.TestRunner, "resident", ResidentRunner),
];
