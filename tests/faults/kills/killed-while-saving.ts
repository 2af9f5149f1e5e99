import { spawn } from "node:child_process";

/** How far a process had come when it was killed, by what it had said. */
export type Killed = {
  /** The last version it began to save; null when none. */
  readonly begun: number | null;
  /** The last version it had saved. */
  readonly ended: number | null;
  readonly complaint: string;
  readonly process: number;
};

/** A save takes longer on a busy machine: the moment is drawn from what one took in this process. */
const [leastSpreadMs, firstSpreadMs] = [4, 150];

/** Starts a saver, lets it begin, and kills it (SIGKILL) at a random moment of one of its saves. */
export function killedWhileSaving(args: readonly string[], random: () => number): Promise<Killed> {
  const child = spawn(process.execPath, [process.argv[1]!, "saver", ...args], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  let complaint = "";
  let begunAt = 0;
  let due = false;
  child.stderr.on("data", (text) => {
    complaint += String(text);
  });
  child.stdout.on("data", (text) => {
    said += String(text);
    if (begunAt === 0) begunAt = performance.now();
    // Half of the processes are killed within their first save, the others once its length is known.
    const first = !due && !/^saved /m.test(said) && random() < 0.5;
    if (first || (!due && /^saved /m.test(said))) {
      due = true;
      setTimeout(kill, random() * Math.max(leastSpreadMs, first ? firstSpreadMs : spread()));
    }
  });
  const spread = () => 1.2 * (performance.now() - begunAt);
  const kill = () => child.kill("SIGKILL");
  return new Promise((resolve) => {
    child.on("close", () => {
      const last = (word: string) => {
        const found = [...said.matchAll(new RegExp(`^${word} (\\d+)$`, "gm"))].pop();
        return found ? Number(found[1]) : null;
      };
      resolve({ begun: last("saving"), ended: last("saved"), complaint, process: child.pid! });
    });
  });
}
