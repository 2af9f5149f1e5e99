import { createContext, Script } from "node:vm";
import { build } from "esbuild";
import { bytesByFolder } from "./bytes-by-folder";
import { codeFrom, middleOf } from "./code-from";

/**
 * What every formula call pays before it computes: the script evaluated in a fresh context, beside an
 * empty script and one that holds nothing but a small schema library. `npm run bench:cold`.
 */
const rounds = Number(process.argv[2] ?? 41);

async function schemaLibraryOnly(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents:
        'import * as z from "zod/mini"; const row = z.object({ a: z.string(), b: z.number() }); export const read = (x) => row.parse(x);',
      resolveDir: process.cwd(),
    },
    bundle: true,
    write: false,
    minify: true,
    format: "iife",
    globalName: "core",
    target: "es2020",
  });
  return outputFiles[0]?.text ?? "";
}

type Times = { readonly parse: number[]; readonly run: number[] };

async function main(): Promise<void> {
  const answer = 'VELOCITY_LOSS("0.60 0.57 0.54 0.48")';
  const scripts: Readonly<Record<string, { readonly code: string; readonly call?: string }>> = {
    "empty script": { code: "" },
    "zod/mini only": { code: await schemaLibraryOnly() },
    "dist/code.js": { code: codeFrom("dist/code.js") },
    "dist/code.js and a first formula": { code: codeFrom("dist/code.js"), call: answer },
  };

  const times = new Map(
    Object.keys(scripts).map((name) => [name, { parse: [], run: [] } as Times]),
  );
  // Turn and turn about, so that a busy moment of the machine falls on all of them.
  for (let round = 0; round < rounds; round++) {
    for (const [name, { code, call }] of Object.entries(scripts)) {
      const realm = createContext({});
      // Text never seen before: nothing compiled earlier can be used again.
      const fresh = Buffer.from(`//${round} ${name}\n${code}\n${call ?? ""}`).toString();
      const started = performance.now();
      const script = new Script(fresh);
      const parsed = performance.now();
      script.runInContext(realm);
      times.get(name)?.parse.push(parsed - started);
      times.get(name)?.run.push(performance.now() - parsed);
    }
  }

  const whole = ({ parse, run }: Times) => middleOf(parse.map((ms, at) => ms + (run[at] ?? 0)));
  const beside = whole(times.get("zod/mini only") ?? { parse: [], run: [] });
  console.log("script                              kB   parse ms   run ms   × zod/mini only");
  for (const [name, each] of times) {
    const kB = Buffer.byteLength(scripts[name]?.code ?? "") / 1000;
    console.log(
      `${name.padEnd(33)}${kB.toFixed(0).padStart(5)}${middleOf(each.parse).toFixed(2).padStart(11)}${middleOf(each.run).toFixed(2).padStart(9)}${(whole(each) / beside).toFixed(2).padStart(18)}`,
    );
  }
  console.log("\nkB of the script by folder, before it is made small:");
  for (const [folder, bytes] of bytesByFolder()) {
    console.log(`${(bytes / 1000).toFixed(1).padStart(7)}  ${folder}`);
  }
}

void main();
