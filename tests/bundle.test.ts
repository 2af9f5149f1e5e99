import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { serverFunctions } from "../src/actions/server-functions";
import { catalogue } from "../src/catalogue";
import { asWritten } from "./catalogue/close-to";

const root = join(__dirname, "..");
if (!existsSync(join(root, "dist/code.js"))) {
  execFileSync(process.execPath, [join(root, "src/bundle/build.mjs")], { cwd: root });
}
const code = readFileSync(join(root, "dist/code.js"), "utf8");

/** A realm with nothing of the platform in it: any service call while evaluating would throw. */
const bare = createContext({});
runInContext(code, bare);
const inRealm = (source: string): unknown => runInContext(source, bare);

test("a cell, the menu or the sidebar can call what is declared, and nothing else", () => {
  const callable = inRealm(
    "Object.getOwnPropertyNames(globalThis).filter((k) => typeof globalThis[k] === 'function' && new RegExp('function ' + k + '\\\\(').test(Function.prototype.toString.call(globalThis[k])) && !/native code/.test(Function.prototype.toString.call(globalThis[k])))",
  ) as string[];
  const declared = [...catalogue, ...serverFunctions].map(({ name }) => name);
  expect([...callable].sort()).toEqual([...declared].sort());
});

test("besides those, the script adds one name only", () => {
  const empty = createContext({});
  const names = (realm: object) =>
    runInContext("Object.getOwnPropertyNames(globalThis)", realm) as string[];
  const before = new Set(names(empty));
  const added = names(bare).filter((name) => !before.has(name));
  const declared = [...catalogue, ...serverFunctions].map(({ name }) => name);
  // The validation library keeps its settings under a global name of its own.
  const known = [...declared, "__zod_globalConfig"];
  expect(added.filter((name) => !known.includes(name))).toEqual(["core"]);
});

test("no module of the script runs before it is asked for", () => {
  const fresh = createContext({});
  runInContext(code, fresh);
  // The validation library would leave its global name behind, a module's tables their memory.
  expect(runInContext("typeof __zod_globalConfig", fresh)).toBe("undefined");
  expect(runInContext('VELOCITY_LOSS("0.60 0.48")', fresh)).toBeCloseTo(0.2, 12);
  expect(runInContext("typeof __zod_globalConfig", fresh)).toBe("undefined");
});

test("a sidebar function's name never ends in an underscore, which would hide it", () => {
  for (const { name } of serverFunctions) expect(name).not.toMatch(/_$/);
});

test.each(catalogue)("$name keeps its help in the script", ({ name, summary, parameters }) => {
  const at = code.indexOf(`function ${name}(`);
  const help = code.slice(code.lastIndexOf("/**", at), at);
  expect(help).toContain(` * ${summary}\n`);
  expect(help).toContain(" * @customfunction\n");
  for (const parameter of parameters) expect(help).toContain(` * @param ${parameter.name} `);
});

test.each(catalogue)("$name gives its examples' results inside the realm", ({ name, examples }) => {
  for (const { args, result } of examples) {
    // Through JSON: arrays of the realm are not this realm's arrays.
    const answer: unknown = JSON.parse(
      inRealm(`JSON.stringify(${name}(...${JSON.stringify(args)}))`) as string,
    );
    expect(asWritten(answer, result)).toEqual(result);
  }
});

test("a refusal reaches the cell as the sentence of an error", () => {
  expect(() => inRealm('FLIGHT_HEIGHT("")')).toThrow("flight_time is blank");
});

test("what stands past the last parameter is not passed over: a set in two pieces, or a decimal comma", () => {
  expect(() => inRealm("VELOCITY_LOSS([[0.70, 0.68]], 0.6)")).toThrow(
    "A cap of 0.6 is not possible: give a fraction up to 0.5, such as 0.2. Speeds go into one range, and a decimal comma parts arguments, too: write 0.79, or “0,79”.",
  );
  expect(() => inRealm("REACTIVE_STRENGTH(36, 0, 18)")).toThrow(
    "REACTIVE_STRENGTH takes 2 arguments at most, and 3 were given: what comes after would not be read. A decimal comma parts arguments, too: write 0.79, or “0,79”.",
  );
  expect(() => inRealm("LOAD_DROP(85, 0, 79, 0, 86, 2, 5)")).toThrow("LOAD_DROP takes 4 arguments");
  expect(inRealm('VELOCITY_LOSS([[0.70, 0.63]], "", undefined)')).toBeCloseTo(0.1, 12);
});

test("the script parses where private and static fields do not", () => {
  // Strings are left out: they may hold anything.
  const bareCode = code.replace(/"(?:[^"\\]|\\.)*"|`(?:[^`\\]|\\.)*`|\/\*[\s\S]*?\*\//g, '""');
  expect(bareCode).not.toMatch(/[{;]\s*#[a-z]|\bstatic\s+[a-z]\w*\s*[=;]|^\s*(import|export)\b/m);
});

test("the manifest asks for this spreadsheet and for a sidebar, nothing else", () => {
  const manifest = JSON.parse(readFileSync(join(root, "dist/appsscript.json"), "utf8"));
  expect(manifest.runtimeVersion).toBe("V8");
  expect(manifest.oauthScopes).toEqual([
    "https://www.googleapis.com/auth/spreadsheets.currentonly",
    "https://www.googleapis.com/auth/script.container.ui",
  ]);
});

test("the script stays small: it is loaded for every formula", () => {
  // Of it 11 kB let every module wait until it is asked for. A third reads coaches' own layouts, a sixth writes the week; libraries are under 60 kB.
  expect(Buffer.byteLength(code)).toBeLessThan(594_000);
});
