import { join } from "node:path";
import { build, transform } from "esbuild";
import { declarations } from "./declarations.mjs";
import { loaded, root } from "./loaded.mjs";
import { chosenLanguage } from "./other-language.mjs";
import { scriptEntry } from "./script-entry.mjs";
import { setWhereDeclared } from "./set-where-declared.mjs";

import { withoutHelp } from "./without-help.mjs";
import { withoutIdleModules } from "./without-idle-modules.mjs";
import { withoutIdleStatistics } from "./without-idle-statistics.mjs";
import { withoutRepeatedCalls } from "./without-repeated-calls.mjs";

const language = { target: "es2020", legalComments: "none", charset: "utf8" };

/** The whole add-on as one script, its declarations last, and what each source adds to its size. */
export async function script(words = chosenLanguage()) {
  const { catalogue, mayBeLeftOut } = await loaded("src/catalogue/index.ts", words);
  const { serverFunctions } = await loaded("src/actions/server-functions.ts", words);
  const bundled = await build({
    bundle: true,
    write: false,
    metafile: true,
    logLevel: "error",
    stdin: { contents: scriptEntry(catalogue), resolveDir: join(root, "src"), loader: "js" },
    plugins: [words, withoutHelp, withoutIdleStatistics],
    // The script as a whole is strict; each module need not say so again. Fields are set, not defined
    // one property at a time, which takes many times as long for every row that is read.
    tsconfigRaw: {
      compilerOptions: { strict: false, alwaysStrict: false, useDefineForClassFields: false },
    },
    // The same figures by shorter names; no name stands for the one below all others.
    define: { "Number.NaN": "NaN", "Number.POSITIVE_INFINITY": "Infinity" },
    format: "iife",
    globalName: "core",
    minifySyntax: true,
    ...language,
  });
  const declared = setWhereDeclared(bundled.outputFiles[0].text);
  const needed = withoutRepeatedCalls(withoutIdleModules(declared)).replaceAll(
    "Number.NEGATIVE_INFINITY",
    "-Infinity",
  );
  const { code } = await transform(needed, {
    // The script is loaded for every formula: every byte is paid for again.
    minify: true,
    // The script engine reports errors by line: lines short enough to be found.
    lineLimit: 900,
    ...language,
  });
  const text = `"use strict";${code}${declarations(catalogue, serverFunctions, mayBeLeftOut)}\n`;
  return { text, metafile: bundled.metafile };
}
