const Sequencer = require("@jest/test-sequencer").default;

/** Tests nearest to the source that holds the fault come first: they notice it soonest. */
module.exports = class NearFirst extends Sequencer {
  sort(tests) {
    const source = (process.env.MUTATION_FILE ?? "").split("/src/")[1]?.split("/") ?? [];
    const shared = ({ path }) => {
      const parts = path.split("/tests/")[1].split("/");
      let same = 0;
      while (same < source.length - 1 && parts[same] === source[same]) same++;
      const own = parts.at(-1).split(".")[0] === source.at(-1)?.split(".")[0];
      return same + (own ? 1 : 0);
    };
    return [...tests].sort((a, b) => shared(b) - shared(a) || (a.path < b.path ? -1 : 1));
  }
};
