import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { Script } from "node:vm";
import { DryRunStatus, MutantRunStatus, TestStatus } from "@stryker-mutator/api/test-runner";
import { collectedTests } from "./collected-tests.mjs";
import { compiled, freshModules, ReadySources } from "./module-registry.mjs";
import { nearFirst } from "./near-first.mjs";

const root = process.env.MUTATION_ROOT;
const lists = process.env.MUTATION_TESTS;
const shortestMs = 4_000;
const separator = " › ";

// A property that fails is noticed: its smallest example is of no use here.
createRequire(join(root, "package.json"))("fast-check").configureGlobal({ endOnFailure: true });

const bounded = new Script("globalThis.boundedRun()");

/** Runs to its end, or throws once it has taken longer. */
function within(ms, run) {
  globalThis.boundedRun = run;
  return bounded.runInThisContext({ timeout: Math.ceil(ms) });
}

const tooLong = (error) => error?.code === "ERR_SCRIPT_EXECUTION_TIMEOUT";
class HitTooOften extends Error {}

/**
 * Runs the tests of a fault in a process that stays: every source is made ready once and loaded anew for
 * each test file, the source with the fault with nothing of the other faults in it. The first test that
 * fails ends the run.
 */
export class ResidentRunner {
  static inject = [];
  #sources = new ReadySources(root);
  #faulty = new Map();
  #spent;
  #files;

  capabilities() {
    return { reloadEnvironment: true };
  }

  async dryRun() {
    const known = globalThis.__stryker__ ?? {};
    globalThis.__stryker__ = known;
    const tests = [];
    for (const file of testFiles()) {
      const sandbox = new ReadySources(process.cwd());
      const load = freshModules((path) => sandbox.module(path), root);
      for (const { name, run } of collectedTests(() => load(join(process.cwd(), "tests", file)))) {
        const id = file + separator + name;
        const started = performance.now();
        known.currentTestId = id;
        const failed = await failure(shortestMs * 100, run);
        known.currentTestId = undefined;
        tests.push({
          id,
          name: id,
          fileName: join("tests", file),
          timeSpentMs: performance.now() - started,
          ...(failed === null
            ? { status: TestStatus.Success }
            : { status: TestStatus.Failed, failureMessage: String(failed?.message ?? failed) }),
        });
      }
    }
    const spent = tests.map(({ id, timeSpentMs }) => [id, timeSpentMs]);
    writeFileSync(lists, JSON.stringify(spent));
    return { status: DryRunStatus.Complete, tests, mutantCoverage: known.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit = Infinity, sandboxFileName }) {
    this.#spent ??= new Map(JSON.parse(readFileSync(lists, "utf8")));
    this.#files ??= timeByFile(this.#spent);
    const inRoot = sandboxFileName.slice(sandboxFileName.lastIndexOf("/src/") + 1);
    const faulty = compiled(this.#withFault(sandboxFileName, activeMutant.id), sandboxFileName);
    let hits = 0;
    globalThis.faultReached = () => {
      if (++hits > hitLimit) throw new HitTooOften();
      return true;
    };
    const path = join(root, inRoot);
    const moduleAt = (one) => (one === path ? faulty : this.#sources.module(one));
    // What runs at loading belongs to no test: then all tests are run of every file that reaches it.
    const atLoading = testFilter === undefined;
    const wanted = new Set(testFilter);
    const files = atLoading ? testFiles() : new Set(testFilter.map((id) => id.split(separator)[0]));
    let nrOfTests = 0;
    for (const file of nearFirst(files, inRoot.slice("src/".length), this.#files)) {
      const load = freshModules(moduleAt, root);
      let tests = [];
      const before = hits;
      const unloaded = await failure(10 * shortestMs, () => {
        tests = collectedTests(() => load(join(root, "tests", file)));
      });
      if (unloaded !== null) return noticed(unloaded, [file], nrOfTests, hits > hitLimit);
      if (atLoading && hits === before) continue;
      for (const { name, run } of tests) {
        const id = file + separator + name;
        if (!atLoading && !wanted.has(id)) continue;
        nrOfTests++;
        const failed = await failure(shortestMs + 5 * (this.#spent.get(id) ?? 0), run);
        if (failed !== null) return noticed(failed, [id], nrOfTests, hits > hitLimit);
      }
    }
    return { status: MutantRunStatus.Survived, nrOfTests };
  }

  /** The source with one fault switched on for good and the switches of the others taken out. */
  #withFault(path, fault) {
    let script = this.#faulty.get(path);
    if (script === undefined) {
      script = this.#sources
        .script(path)
        .replace("function stryCov_9fa48() {", "function stryCov_9fa48() { return;");
      this.#faulty.set(path, script);
    }
    return script.replace(/stryMutAct_9fa48\("(\d+)"\)/g, (_, id) =>
      id === fault ? "globalThis.faultReached()" : "false",
    );
  }
}

/** What a test throws, or null; a test that does not end is stopped. */
async function failure(ms, run) {
  try {
    await within(ms, run);
    return null;
  } catch (error) {
    return error ?? new Error("thrown without a word");
  }
}

function noticed(error, killedBy, nrOfTests, hitTooOften) {
  if (tooLong(error) || hitTooOften) return { status: MutantRunStatus.Timeout, nrOfTests };
  const failureMessage = String(error?.message ?? error).slice(0, 300);
  return { status: MutantRunStatus.Killed, killedBy, failureMessage, nrOfTests };
}

function timeByFile(spent) {
  const files = new Map();
  for (const [id, ms] of spent) {
    const [file] = id.split(separator);
    files.set(file, (files.get(file) ?? 0) + ms);
  }
  return files;
}

const testFiles = () => JSON.parse(process.env.MUTATION_TEST_FILES);
