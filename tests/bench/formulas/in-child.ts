import { spawnSync } from "node:child_process";

/** Runs this program again with other arguments; its last line, or null when it took too long. */
export function inChild(args: readonly (string | number)[], limitS: number): string | null {
  const child = spawnSync(
    process.execPath,
    ["--expose-gc", "--max-old-space-size=12000", process.argv[1] ?? "", ...args.map(String)],
    { encoding: "utf8", maxBuffer: 1 << 26, timeout: 1000 * limitS, killSignal: "SIGKILL" },
  );
  if ((child.error as NodeJS.ErrnoException | undefined)?.code === "ETIMEDOUT") return null;
  const line = child.stdout.trim().split("\n").pop() ?? "";
  if (child.status !== 0 || line === "") throw new Error(`${args.join(" ")}: ${child.stderr}`);
  return line;
}
