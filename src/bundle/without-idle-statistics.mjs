import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The library's own sources that distributions need; matrices, models, regression and tests are not used. */
const needed = ["_header", "core", "special", "distribution", "_footer"];
const ourStatistics = join(dirname(fileURLToPath(import.meta.url)), "../statistics");

/** Distributions that our statistics ask for a quantile or a probability. */
function distributionsAsked() {
  const text = readdirSync(ourStatistics).map((name) =>
    readFileSync(join(ourStatistics, name), "utf8"),
  );
  return new Set([...text.join("\n").matchAll(/jStat\.(\w+)\.\w+\(/g)].map(([, name]) => name));
}

/** The library gives each distribution its functions in a statement of its own: those not asked for go. */
function withoutIdleDistributions(source) {
  const asked = distributionsAsked();
  const kept = new Set();
  const text = source.replace(/^jStat\.extend\(jStat\.(\w+), \{.*?^\}\);$/gms, (given, name) => {
    if (!asked.has(name)) return "";
    kept.add(name);
    return given;
  });
  for (const name of asked)
    if (!kept.has(name)) throw new Error(`the statistics library has no ${name} to keep`);
  return text;
}

/** The statistics library made of what is used alone: every formula call parses every byte. */
export const withoutIdleStatistics = {
  name: "without-idle-statistics",
  setup(build) {
    build.onLoad({ filter: /[\\/]jstat[\\/]dist[\\/]jstat\.js$/ }, ({ path }) => {
      const sources = join(dirname(path), "..", "src");
      const text = needed.map((name) => {
        const source = readFileSync(join(sources, `${name}.js`), "utf8");
        return name === "distribution" ? withoutIdleDistributions(source) : source;
      });
      return { contents: text.join("\n"), loader: "js" };
    });
  },
};
