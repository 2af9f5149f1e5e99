import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Metafile } from "esbuild";

/** Bytes each folder of the sources, or each library, adds to the script; most first. */
export function bytesByFolder(): readonly (readonly [string, number])[] {
  const [output] = Object.values(metafile().outputs);
  const bytes = new Map<string, number>();
  for (const [file, { bytesInOutput }] of Object.entries(output?.inputs ?? {})) {
    const library = /node_modules\/([^/]+)/.exec(file)?.[1];
    const folder = library ?? file.split("/").slice(0, -1).slice(0, 3).join("/");
    bytes.set(folder, (bytes.get(folder) ?? 0) + bytesInOutput);
  }
  return [...bytes].sort((a, b) => b[1] - a[1]);
}

/** The build is a module of its own kind, which this bundled program cannot load: another process does. */
function metafile(): Metafile {
  const build = pathToFileURL(join(process.cwd(), "src/bundle/script.mjs")).href;
  const program = `import { script } from "${build}"; process.stdout.write(JSON.stringify((await script()).metafile));`;
  const told = execFileSync(process.execPath, ["--input-type=module", "--eval", program], {
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  return JSON.parse(told) as Metafile;
}
