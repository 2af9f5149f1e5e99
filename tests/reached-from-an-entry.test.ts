import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileAt, files, root, sourceOf, text } from "./names-in-sources";

const sources = new Map(files.map((file) => [file, sourceOf(file)]));
const reached = new Set<string>();
const ran = new Set<string>();

function run(file: string): void {
  if (ran.has(file)) return;
  ran.add(file);
  const { atOnce, loaded } = sources.get(file)!;
  for (const other of loaded) run(other);
  for (const name of atOnce) {
    if (name.startsWith("import ")) reachAll(name.slice("import ".length));
    else reach(file, name);
  }
}
function reach(file: string, name: string): void {
  const at = `${file} ${name}`;
  if (reached.has(at)) return;
  const { declared, imported } = sources.get(file)!;
  const other = imported.get(name);
  if (other) {
    reached.add(at);
    if (other.name === "*") reachAll(other.from);
    else reachExport(other.from, other.name);
  }
  const own = declared.get(name);
  if (!own) return;
  reached.add(at);
  run(file);
  for (const mentioned of own.mentions) if (mentioned !== name) reach(file, mentioned);
}
function reachExport(file: string, name: string): void {
  const { exported, handsOn } = sources.get(file)!;
  const export_ = exported.get(name);
  if (!export_) {
    for (const other of handsOn) reachExport(other, name);
    return;
  }
  reached.add(`${file} export ${name}`);
  run(file);
  if (export_.from) reachExport(export_.from, export_.name);
  else reach(file, export_.name);
}
function reachAll(file: string): void {
  run(file);
  const { exported, handsOn } = sources.get(file)!;
  for (const name of exported.keys()) reachExport(file, name);
  for (const other of handsOn) reachAll(other);
}

/**
 * Where the product begins: every file that the build, the terminal or a script of the package names
 * by its path.
 */
const builders = (readdirSync(join(root, "src"), { recursive: true }) as string[])
  .filter((file) => file.endsWith(".mjs"))
  .map((file) => `src/${file}`);
const folders = [".", "src", "src/local-host"];
const namedIn = (file: string) =>
  [...text(file).matchAll(/[\w./-]+\/[\w./-]+|[\w-]+\.tsx?\b/g)].flatMap(([path]) =>
    [dirname(file), ...folders].flatMap((folder) => fileAt(`${folder}/a`, `./${path}`) ?? []),
  );
const entries = [...new Set([...builders, "package.json"].flatMap(namedIn))];
for (const entry of entries) reachAll(entry);

test("the product begins somewhere", () => {
  expect(entries.length).toBeGreaterThan(8);
  for (const entry of entries) expect(existsSync(join(root, entry))).toBe(true);
});

test("whatever a file of the sources hands out is used by the product, not by tests alone", () => {
  const idle = files.flatMap((file) => {
    const { exported, types } = sources.get(file)!;
    return [...exported.keys()]
      .filter((name) => !types.has(exported.get(name)!.name))
      .filter((name) => !reached.has(`${file} export ${name}`) && !reached.has(`${file} ${name}`))
      .map((name) => `${file}: ${name}`);
  });
  expect(idle).toEqual([]);
});
