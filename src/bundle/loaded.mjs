import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { chosenLanguage } from "./other-language.mjs";

export const root = join(dirname(fileURLToPath(import.meta.url)), "../..");

/** A TypeScript module of the sources in the chosen language, loaded as the build needs its data. */
export async function loaded(path, language = chosenLanguage()) {
  const { outputFiles } = await build({
    entryPoints: [join(root, path)],
    bundle: true,
    write: false,
    format: "esm",
    plugins: [language],
    logLevel: "error",
  });
  const text = Buffer.from(outputFiles[0].text).toString("base64");
  return import(`data:text/javascript;base64,${text}`);
}
