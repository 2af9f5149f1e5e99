import { readdirSync, unlinkSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** The file that a save writes beside the real one, until it takes its place. */
export function unfinishedName(path: string, process: number): string {
  return join(dirname(path), `.${basename(path)}.saving-${process}`);
}

/**
 * Removes what killed programs left of a save: it holds the squad's rows, and nobody would look for
 * it. Called once a save is through; whoever else was writing meanwhile would be refused anyway.
 */
export function sweepUnfinished(path: string): void {
  const start = basename(unfinishedName(path, 0)).slice(0, -1);
  try {
    for (const name of readdirSync(dirname(path))) {
      const of = name.startsWith(start) ? name.slice(start.length) : "";
      if (/^\d+$/.test(of) && !isRunning(Number(of))) unlinkSync(join(dirname(path), name));
    }
  } catch {
    // The save itself is done; the next one tries again.
  }
}

function isRunning(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    // Another user's program is running too, though it may not be asked.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
