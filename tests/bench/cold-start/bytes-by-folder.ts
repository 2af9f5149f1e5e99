import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Metafile } from "esbuild";

/** Bytes each folder of the sources, or each library, adds to the script; most first. */
export async function bytesByFolder(): Promise<readonly (readonly [string, number])[]> {
  const path = pathToFileURL(join(process.cwd(), "src/bundle/script.mjs")).href;
  const { script } = (await import(path)) as {
    script: () => Promise<{ readonly metafile: Metafile }>;
  };
  const { metafile } = await script();
  const [output] = Object.values(metafile.outputs);
  const bytes = new Map<string, number>();
  for (const [file, { bytesInOutput }] of Object.entries(output?.inputs ?? {})) {
    const library = /node_modules\/([^/]+)/.exec(file)?.[1];
    const folder = library ?? file.split("/").slice(0, -1).slice(0, 3).join("/");
    bytes.set(folder, (bytes.get(folder) ?? 0) + bytesInOutput);
  }
  return [...bytes].sort((a, b) => b[1] - a[1]);
}
