const { existsSync, readFileSync } = require("node:fs");
const Sequencer = require("@jest/test-sequencer").default;

/**
 * The test of the source's own name comes first, then tests of its folder before others: they notice a
 * fault soonest. Of equals the quicker ones come first, for the first failure ends the run.
 */
module.exports = class NearFirst extends Sequencer {
  sort(tests) {
    const source = (process.env.MUTATION_FILE ?? "").split("/src/")[1]?.split("/") ?? [];
    const spent = timeSpent();
    const nearness = ({ path }) => {
      const parts = path.split("/tests/")[1].split("/");
      let same = 0;
      while (same < source.length - 1 && parts[same] === source[same]) same++;
      const own = parts.at(-1).split(".")[0] === source.at(-1)?.split(".")[0];
      return same + (own ? 1 : 0);
    };
    const time = ({ path }) => spent.get(path) ?? 0;
    return [...tests].sort(
      (a, b) => nearness(b) - nearness(a) || time(a) - time(b) || (a.path < b.path ? -1 : 1),
    );
  }
};

/** Milliseconds by test file in the run without a fault, which writes them at its end. */
function timeSpent() {
  const spent = new Map();
  const path = process.env.MUTATION_TESTS;
  if (!path || !existsSync(path)) return spent;
  for (const [, file, ms] of JSON.parse(readFileSync(path, "utf8"))) {
    spent.set(file, (spent.get(file) ?? 0) + ms);
  }
  return spent;
}
