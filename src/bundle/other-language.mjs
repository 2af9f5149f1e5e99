import { existsSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { root } from "./loaded.mjs";

// Asked for when needed: the module that says where the sources are loads this one first.
const words = () => join(root, "src/words");

/**
 * Words in another language: a folder whose files are named as those of `src/words` and export the
 * same names. Each is taken in place of the British English file, and whatever it does not have (a
 * file, a name, a key it spreads from the English one) stays British English. Nothing is added to the
 * script when no language is chosen.
 *
 * @param folder absolute path; null for British English
 */
export const inLanguage = (folder) => ({
  name: "other-language",
  setup(build) {
    if (folder === null) return;
    build.onResolve({ filter: /^\.{1,2}\// }, ({ path, resolveDir }) => {
      // The language's own files reach the English ones by the same names.
      if (resolveDir === folder) return undefined;
      const meant = resolve(resolveDir, path);
      const instead = join(folder, `${basename(meant)}.ts`);
      return dirname(meant) === words() && existsSync(instead) ? { path: instead } : undefined;
    });
  },
});

/** The language named by `HOLDLINE_LANGUAGE`, a folder in `src/words`; British English by itself. */
export function chosenLanguage(name = process.env.HOLDLINE_LANGUAGE ?? "") {
  if (name === "" || name === "en-GB") return inLanguage(null);
  const folder = join(words(), name);
  if (!/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/.test(name) || !existsSync(folder)) {
    throw new Error(`There is no folder src/words/${name} with words in that language.`);
  }
  return inLanguage(folder);
}
