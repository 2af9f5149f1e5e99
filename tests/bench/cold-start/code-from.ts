import { readFileSync } from "node:fs";
import { join } from "node:path";

/** A built file's text. */
export function codeFrom(path: string): string {
  return readFileSync(join(process.cwd(), path), "utf8");
}

/** The middle of several times, which one busy moment does not move. */
export function middleOf(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[times.length >> 1] ?? Number.NaN;
}
