import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const ourStatistics = join(dirname(fileURLToPath(import.meta.url)), "../statistics");

/**
 * Functions of the library's own sources by the name they are called by, such as `ibeta` and
 * `studentt.inv`, and their text: special functions stand by themselves, those of a distribution in
 * one statement.
 */
function functionsIn(special, distributions) {
  const found = new Map();
  for (const [, name, text] of special.matchAll(/^jStat\.(\w+) = (function\b.*?^\});?$/gms))
    found.set(name, text);
  for (const [, of, methods] of distributions.matchAll(
    /^jStat\.extend\(jStat\.(\w+), \{$(.*?)^\}\);$/gms,
  ))
    for (const [, name, text] of methods.matchAll(/^ {2}(\w+): (function\b.*?^ {2}\}),?$/gms))
      found.set(`${of}.${name}`, text);
  return found;
}

const callsIn = (text) => [...text.matchAll(/\bjStat\.(\w+(?:\.\w+)?)\(/g)].map(([, name]) => name);

/** What our statistics call, and all that it calls. */
function needed(functions) {
  const ours = readdirSync(ourStatistics).map((name) =>
    readFileSync(join(ourStatistics, name), "utf8"),
  );
  const names = new Set(callsIn(ours.join("\n")));
  for (const name of names) {
    const text = functions.get(name);
    if (text === undefined) throw new Error(`the statistics library has no ${name} to keep`);
    for (const called of callsIn(text)) names.add(called);
  }
  return [...names];
}

/** The statistics library made of what is used alone: every formula call parses every byte. */
export const withoutIdleStatistics = {
  name: "without-idle-statistics",
  setup(build) {
    build.onLoad({ filter: /[\\/]jstat[\\/]dist[\\/]jstat\.js$/ }, ({ path }) => {
      const source = (name) => readFileSync(join(dirname(path), "..", "src", `${name}.js`), "utf8");
      const functions = functionsIn(source("special"), source("distribution"));
      const names = needed(functions);
      const distributions = names.flatMap((name) => (name.includes(".") ? name.split(".")[0] : []));
      const contents = [
        `export const jStat = { ${[...new Set(distributions)].map((of) => `${of}: {}`)} };`,
        ...names.map((name) => `jStat.${name} = ${functions.get(name)};`),
      ];
      return { contents: contents.join("\n"), loader: "js" };
    });
  },
};
