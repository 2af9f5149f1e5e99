import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** The library's own sources that distributions need; matrices, models, regression and tests are not used. */
const needed = ["_header", "core", "special", "distribution", "_footer"];

/** The statistics library made of those sources alone: every formula call parses every byte. */
export const withoutIdleStatistics = {
  name: "without-idle-statistics",
  setup(build) {
    build.onLoad({ filter: /[\\/]jstat[\\/]dist[\\/]jstat\.js$/ }, ({ path }) => {
      const sources = join(dirname(path), "..", "src");
      const text = needed.map((name) => readFileSync(join(sources, `${name}.js`), "utf8"));
      return { contents: text.join("\n"), loader: "js" };
    });
  },
};
