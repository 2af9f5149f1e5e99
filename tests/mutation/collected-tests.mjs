import { expect } from "expect";
import fc from "fast-check";
import { ModuleMocker } from "jest-mock";

// As in tests/same-cases.ts: a fault is noticed in every run or in none.
fc.configureGlobal({ seed: 1 });

const mocker = new ModuleMocker(globalThis);
let names = [];
let tests = [];

/** The test's place among those of its file: names may be the same, and numbers count them. */
function define(title, run) {
  const name = [...names, title].join(" › ");
  const before = tests.filter((one) => one.title === name).length;
  tests.push({ title: name, name: before === 0 ? name : `${name} (${before + 1})`, run });
}

function group(title, run) {
  names.push(title);
  run();
  names.pop();
}

const forEach = (one) => (table) => (title, run) => {
  for (const row of table) one(String(title), () => (Array.isArray(row) ? run(...row) : run(row)));
};

/** What a test file finds around it: the part of the test runner's that the files use. */
globalThis.test = Object.assign(define, { each: forEach(define) });
globalThis.describe = Object.assign(group, { each: forEach(group) });
globalThis.expect = expect;
globalThis.jest = { fn: mocker.fn.bind(mocker), spyOn: mocker.spyOn.bind(mocker) };

/** The tests that a file holds, in their order. */
export function collectedTests(load) {
  names = [];
  tests = [];
  load();
  return tests;
}
