import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import { compileFunction } from "node:vm";
import { transformSync } from "@swc/core";

const ends = ["", ".ts", ".tsx", ".json", "/index.ts"];
const given = ["exports", "require", "module", "__filename", "__dirname"];

/** How the test runner of `npm test` reads a source, so that both read it alike. */
function swcSettings(root) {
  const { jest } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const [, settings] = jest.transform["^.+\\.(ts|tsx)$"];
  return { ...settings, module: { type: "commonjs" }, sourceMaps: false, swcrc: false };
}

/** Sources made ready to run, each once. */
export class ReadySources {
  #settings;
  #ready = new Map();

  constructor(root) {
    this.root = root;
    this.#settings = swcSettings(root);
  }

  /** The source's JavaScript. */
  script(path) {
    return transformSync(readFileSync(path, "utf8"), { ...this.#settings, filename: path }).code;
  }

  /** The function that runs the source, as modules are run. */
  module(path) {
    let ready = this.#ready.get(path);
    if (ready === undefined) {
      ready = compiled(this.script(path), path);
      this.#ready.set(path, ready);
    }
    return ready;
  }
}

/** The function that runs a module of this JavaScript. */
export const compiled = (script, path) => compileFunction(script, given, { filename: path });

const places = new Map();

function placeOf(from, name) {
  const asked = resolve(dirname(from), name);
  let place = places.get(asked);
  if (place === undefined) {
    place = ends.map((end) => asked + end).find((one) => /\.\w+$/.test(one) && existsSync(one));
    if (place === undefined) throw new Error(`${from} asks for ${name}, which is not there`);
    places.set(asked, place);
  }
  return place;
}

/**
 * Loads sources anew, none of them remembering what it did before; packages are loaded once.
 *
 * @param moduleAt the function that runs the source at a path
 * @param root where the packages are
 */
export function freshModules(moduleAt, root) {
  const packages = createRequire(join(root, "package.json"));
  const loaded = new Map();
  const load = (path) => {
    const known = loaded.get(path);
    if (known !== undefined) return known.exports;
    const module = { exports: {} };
    loaded.set(path, module);
    const ask = (name) => (name.startsWith(".") ? load(placeOf(path, name)) : packages(name));
    if (path.endsWith(".json")) module.exports = JSON.parse(readFileSync(path, "utf8"));
    else moduleAt(path)(module.exports, ask, module, path, dirname(path));
    return module.exports;
  };
  return load;
}
