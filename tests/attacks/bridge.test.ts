import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { menuFunctions, serverFunctions } from "../../src/actions/server-functions";
import { catalogue } from "../../src/catalogue";
import type { OpenHost } from "../../src/local-host/open-host";
import { plainTab } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";

const code = readFileSync(join(__dirname, "../../dist/code.js"), "utf8");
const declared = new Set([...catalogue, ...serverFunctions].map(({ name }) => name));
let host: OpenHost;
beforeAll(async () => {
  host = await local.openHost({
    workbook: {
      name: "Quillbeck",
      tabs: [plainTab("Sets", [[{ value: "Athlete" }]])],
      names: [],
      properties: {},
    },
    bundleSource: code,
    files: { Sidebar: "" },
  });
});
afterAll(() => host.dispose());

/** Every name a realm has, its prototypes' included, and some that only a browser has. */
const names = new Set([
  ...(runInContext(
    "const all = []; for (let at = globalThis; at; at = Object.getPrototypeOf(at)) all.push(...Object.getOwnPropertyNames(at)); all",
    createContext({}),
  ) as string[]),
  ..."core core.serve core.compute serve compute hidden_ onOpen_ open fetch alert postMessage print close navigate".split(
    " ",
  ),
  ...[
    "",
    " squadView",
    "squadView ",
    "SQUADVIEW",
    "squadView()",
    "a;squadView",
    "0",
    "length",
    "name",
  ],
]);

test.each([...names].filter((name) => !declared.has(name)))(
  "“%s” cannot be called from the sidebar",
  (name) => {
    expect(() => host.run(name, ["1+1"])).toThrow(`Script function not found: ${name}`);
  },
);

test("every function the menu or the sidebar calls is there, and asks for its own message", () => {
  const menu = new Set(menuFunctions.map(({ name }) => name));
  let refused = 0;
  for (const { name } of serverFunctions) {
    if (menu.has(name)) continue;
    for (const args of [[], [null], ["x"], [{ "more than it takes": 1 }], [[]]]) {
      expect(() => host.run(name, args)).toThrow(/cannot be right\. Close and open it again\.$/);
      refused++;
    }
  }
  expect(refused).toBe((serverFunctions.length - menuFunctions.length) * 5);
});

test("what the script keeps to itself is no function of the realm", () => {
  const realm = createContext({});
  runInContext(code, realm);
  const own = runInContext(
    "Object.getOwnPropertyNames(globalThis).filter((name) => typeof globalThis[name] === 'function' && !/native code/.test(Function.prototype.toString.call(globalThis[name])))",
    realm,
  ) as string[];
  expect([...own].sort()).toEqual([...declared].sort());
  // The one other name holds the two ways in, neither of which the platform can call.
  expect(runInContext("typeof core + Object.keys(core).sort()", realm)).toBe("objectcompute,serve");
});

test.each(["__proto__", "constructor", "toString", "valueOf", "hasOwnProperty", "eval", "x"])(
  "the script's own ways in refuse the name “%s”",
  (name) => {
    const realm = createContext({ SpreadsheetApp: { getActive: () => ({}) } });
    runInContext(code, realm);
    Object.assign(realm, { name });
    expect(() => runInContext("core.serve(name, [{}])", realm)).toThrow(/may not ask for/);
    expect(() => runInContext("core.compute(name, [1])", realm)).toThrow();
  },
);
