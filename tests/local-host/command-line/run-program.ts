import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";

export const root = join(__dirname, "../../..");
const program = join(root, "dist/local/holdline.cjs");
if (!existsSync(program)) throw new Error("Run npm run build first: these tests run the program.");

export type Ran = { readonly status: number | null; readonly out: string; readonly err: string };

/** Runs the built program as a coach would, and tells what it said. */
export function holdline(...words: readonly string[]): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...words], { cwd: root });
    let out = "";
    let err = "";
    child.stdout.on("data", (part) => {
      out += part;
    });
    child.stderr.on("data", (part) => {
      err += part;
    });
    child.on("error", reject);
    child.on("close", (status) => resolve({ status, out, err }));
  });
}
