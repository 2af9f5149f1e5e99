/**
 * Each module of the bundle first runs those it imports, one call for each. A call is left out when
 * another of the same list runs that module anyway, and a module with nothing of its own to run is
 * replaced by what it would call: a list names only what nobody on it brings along. Which module runs
 * before which stays as the imports have it.
 */
export function withoutRepeatedCalls(bundle) {
  const lists = new Map(
    [...bundle.matchAll(moduleStart)].map(([, name, calls]) => [name, callsIn(calls)]),
  );
  const passing = new Set([...bundle.matchAll(passingModule)].map(([, name]) => name));
  /** All that running a module runs. */
  const reached = new Map();
  const reachOf = (name) => {
    const known = reached.get(name);
    if (known) return known;
    const all = new Set();
    const rest = [...(lists.get(name) ?? [])];
    while (rest.length > 0) {
      const next = rest.pop();
      if (all.has(next)) continue;
      all.add(next);
      rest.push(...(lists.get(next) ?? []));
    }
    reached.set(name, all);
    return all;
  };
  const isCircle = (name) => reachOf(name).has(name);
  const behind = (name) =>
    passing.has(name) && !isCircle(name) ? lists.get(name).flatMap(behind) : [name];
  const shortened = bundle.replace(moduleStart, (whole, name, calls) => {
    // Modules in a circle bring each other along: there the list stays whole.
    if (isCircle(name)) return whole;
    const list = [...new Set(lists.get(name).flatMap(behind))];
    const kept = list.filter(
      (called) => isCircle(called) || !list.some((other) => reachOf(other).has(called)),
    );
    return whole.slice(0, whole.length - calls.length) + kept.map((one) => `${one}();\n`).join("");
  });
  const uses = new Map();
  for (const [name] of shortened.matchAll(/\binit_[\w$]+/g)) {
    uses.set(name, (uses.get(name) ?? 0) + 1);
  }
  return shortened.replace(passingModule, (whole, name) => (uses.get(name) === 1 ? "" : whole));
}

const callsIn = (text) => [...text.matchAll(/(init_[\w$]+)\(\);/g)].map(([, name]) => name);

/** As the bundler prints it: the module's name, then its calls, one a line. */
const moduleStart = /\b(init_[\w$]+) = __esm\(\{\n *m\(\) \{\n((?: *init_[\w$]+\(\);\n)*)/g;
/** A module of calls alone. */
const passingModule =
  /^ *var (init_[\w$]+) = __esm\(\{\n *m\(\) \{\n(?: *init_[\w$]+\(\);\n)* *\}\n *\}\);\n/gm;
