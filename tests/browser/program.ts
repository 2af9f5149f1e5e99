import { type ChildProcess, spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";

const built = join(__dirname, "../../dist/local/holdline.cjs");

/** The built program, started as the command line starts it. */
export type Program = {
  /** Resolves with the address once it is said. */
  readonly address: Promise<string>;
  /** Stops it as Ctrl+C does; resolves with its exit status and all it said. */
  readonly stop: () => Promise<{ status: number | null; said: string }>;
};

export function startProgram(...args: readonly string[]): Program {
  if (!existsSync(built)) throw new Error("Run npm run build first: the program is missing.");
  const program: ChildProcess = spawn(process.execPath, [built, ...args]);
  let said = "";
  let complaint = "";
  program.stderr!.on("data", (text) => {
    complaint += String(text);
  });
  const ended = new Promise<number | null>((resolve) => program.on("exit", resolve));
  const address = new Promise<string>((resolve, reject) => {
    program.stdout!.on("data", (text) => {
      said += String(text);
      const found = /http:\/\/\S+/.exec(said);
      if (found) resolve(found[0]);
    });
    void ended.then((status) => reject(new Error(`It ended with ${status}: ${complaint}`)));
  });
  return {
    address,
    stop: async () => {
      program.kill("SIGINT");
      return { status: await ended, said };
    },
  };
}
