import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(__dirname, "..");
type Package = {
  readonly version?: string;
  readonly license?: string;
  readonly licenses?: readonly { readonly type: string }[];
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly overrides?: Readonly<Record<string, string>>;
};
const packageOf = (folder: string) =>
  JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Package;
const own = packageOf(root);
const named = { ...own.dependencies, ...own.devDependencies };

/** Rows of the guide's table of libraries: the packages of a row, their licence, and why. */
const rows = readFileSync(join(root, "DEVELOPERS.md"), "utf8")
  .split("## Libraries")[1]!
  .split("\n## ")[0]!
  .split("\n")
  .filter((line) => /^\| (?!package|-)/.test(line))
  .map((line) => line.split("|").slice(1, -1))
  .map(([packages = "", licence = "", why = ""]) => ({
    packages: packages
      .replace(/\([^)]*\)/g, "")
      .split(",")
      .map((one) => one.trim()),
    licence: licence.trim(),
    why: why.trim(),
  }));
const isNamed = (name: string) => (written: string) =>
  written === name || (written.endsWith("/*") && name.startsWith(written.slice(0, -1)));
const rowOf = (name: string) => rows.find(({ packages }) => packages.some(isNamed(name)));
/** What a package says of itself; older ones keep a list. */
const licenceIn = (folder: string): string => {
  const { license, licenses } = packageOf(folder);
  return license ?? licenses?.map(({ type }) => type).join(" OR ") ?? "";
};

test.each(Object.keys(named))(
  "%s stands in the guide with its own licence and a reason",
  (name) => {
    expect(rowOf(name)?.why).toMatch(/\w+/);
    expect(rowOf(name)?.licence).toBe(licenceIn(join(root, "node_modules", name)));
  },
);

test("the guide names no package that is not used", () => {
  const left = rows
    .flatMap(({ packages }) => packages)
    .filter((written) => !Object.keys(named).some((name) => isNamed(name)(written)));
  expect(left).toEqual([]);
});

test("every version is pinned", () => {
  for (const version of Object.values({ ...named, ...own.overrides }))
    expect(version).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
});

/** Licences under which nobody who takes a part must give away the rest. */
const permissive =
  /^\(?(MIT|ISC|BSD-2-Clause|BSD-3-Clause|Apache-2\.0|0BSD|Unlicense|CC0-1\.0|BlueOak-1\.0\.0|Python-2\.0|MIT-0|Zlib)\b/;

const firstLines = (path: string) => readFileSync(join(root, path), "utf8").slice(0, 200);
/** Packages that say nothing in their own file, and what stands for it. */
const silent: Readonly<Record<string, () => string>> = {
  "node_modules/@univerjs/telemetry": () =>
    /Apache License\s+Version 2\.0/.test(firstLines("node_modules/@univerjs/telemetry/LICENSE"))
      ? "Apache-2.0"
      : "",
};

test("what is put in place of another's choice is what is installed, and the guide says why", () => {
  const guide = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  for (const [name, version] of Object.entries(own.overrides ?? {})) {
    expect(packageOf(join(root, "node_modules", name)).version).toBe(version);
    expect(guide).toContain(`${name} ${version}`);
  }
});

test("whatever ships, and all that it brings along, is under a permissive licence", () => {
  const lock = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as {
    packages: Record<string, { dev?: boolean; optional?: boolean }>;
  };
  const shipped = Object.entries(lock.packages).filter(
    ([path, { dev }]) =>
      path !== "" && dev !== true && existsSync(join(root, path, "package.json")),
  );
  expect(shipped.length).toBeGreaterThan(30);
  const others = shipped
    .map(([path]) => [path, licenceIn(join(root, path)) || (silent[path]?.() ?? "")] as const)
    .filter(
      ([, licence]) => !permissive.test(licence) && !/\bOR (MIT|Apache-2\.0|ISC)\b/.test(licence),
    );
  expect(others).toEqual([]);
});
