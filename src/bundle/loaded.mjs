import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

export const root = join(dirname(fileURLToPath(import.meta.url)), "../..");

/** A TypeScript module of the sources, loaded as the build needs its data. */
export async function loaded(path) {
  const { outputFiles } = await build({
    entryPoints: [join(root, path)],
    bundle: true,
    write: false,
    format: "esm",
    logLevel: "error",
  });
  const text = Buffer.from(outputFiles[0].text).toString("base64");
  return import(`data:text/javascript;base64,${text}`);
}
