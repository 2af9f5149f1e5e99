import { createHash } from "node:crypto";
import * as nodeDisk from "node:fs";
import { dirname } from "node:path";
import { accept, type Outcome, refuse } from "../../outcome";
import { sweepUnfinished, unfinishedName } from "./sweep-unfinished";

/** What a file was when it was last read or written here. */
export type Stamp = { readonly size: number; readonly mtimeMs: number; readonly sha256: string };

/** The disk's own steps; tests let each of them fail in turn. */
export type Disk = Pick<
  typeof nodeDisk,
  | "openSync"
  | "writeSync"
  | "fsyncSync"
  | "closeSync"
  | "renameSync"
  | "unlinkSync"
  | "statSync"
  | "readFileSync"
  | "realpathSync"
  | "chmodSync"
>;

/** A file's stamp; null when there is no file. */
export function stampOf(path: string, disk: Disk = nodeDisk): Stamp | null {
  const found = disk.statSync(path, { throwIfNoEntry: false });
  if (!found?.isFile()) return null;
  const { size, mtimeMs } = found;
  const sha256 = createHash("sha256").update(disk.readFileSync(path)).digest("hex");
  return { size, mtimeMs, sha256 };
}

/**
 * Writes a file so that at any moment either the old or the new one is there, whole: beside it,
 * flushed to the disk, then renamed into its place. A file that another program changed is never
 * overwritten.
 *
 * @param expected the file as it was last seen; null when none must be there yet
 * @returns the new stamp. Refuses `already-there`, `changed-on-disk`, `gone-from-disk` (facts `path`)
 * and `not-written` (facts `path`, `reason`)
 */
export function saveSafely(
  given: string,
  bytes: Uint8Array,
  expected: Stamp | null,
  disk: Disk = nodeDisk,
): Outcome<Stamp> {
  let beside: string | null = null;
  try {
    // A link stays a link: its file is what is written.
    const linked = disk.statSync(given, { throwIfNoEntry: false });
    const path = linked ? disk.realpathSync(given) : given;
    const moved = unexpected(path, given, expected, disk);
    if (moved) return moved;
    beside = unfinishedName(path, process.pid);
    const file = disk.openSync(beside, "w", 0o600);
    try {
      for (let at = 0; at < bytes.length; ) at += disk.writeSync(file, bytes, at);
      disk.fsyncSync(file);
    } finally {
      disk.closeSync(file);
    }
    disk.chmodSync(beside, linked ? linked.mode & 0o777 : 0o644);
    // Writing took time: look again just before the old file goes.
    const movedMeanwhile = unexpected(path, given, expected, disk);
    if (movedMeanwhile) {
      disk.unlinkSync(beside);
      return movedMeanwhile;
    }
    disk.renameSync(beside, path);
    beside = null;
    flushFolder(dirname(path), disk);
    sweepUnfinished(path);
    return accept(stampOf(path, disk)!);
  } catch (error) {
    if (beside !== null) removed(beside, disk);
    const reason = error instanceof Error ? error.message : String(error);
    return refuse("not-written", { path: given, reason });
  }
}

function unexpected(
  path: string,
  given: string,
  expected: Stamp | null,
  disk: Disk,
): Outcome<never> | null {
  const now = stampOf(path, disk);
  if (expected === null) return now === null ? null : refuse("already-there", { path: given });
  if (now === null) return refuse("gone-from-disk", { path: given });
  return now.sha256 === expected.sha256 ? null : refuse("changed-on-disk", { path: given });
}

/** The rename itself must reach the disk too; some systems cannot flush a folder. */
function flushFolder(folder: string, disk: Disk): void {
  try {
    const handle = disk.openSync(folder, "r");
    try {
      disk.fsyncSync(handle);
    } finally {
      disk.closeSync(handle);
    }
  } catch {
    // The new file is in its place; only its name is flushed later.
  }
}

function removed(path: string, disk: Disk): void {
  try {
    disk.unlinkSync(path);
  } catch {
    // It may never have been made.
  }
}
