import { readFileSync, writeSync } from "node:fs";
import { join } from "node:path";
import { fileStore } from "../../../src/local-host/files/file-store";
import { saveSafely, stampOf } from "../../../src/local-host/files/save-safely";
import { versionOf } from "./versions";

/** What the parent reads: written at once, so that nothing said before the kill is lost. */
const say = (text: string) => writeSync(1, `${text}\n`);
const own: ReadonlySet<string> = new Set();

/** Saves one version after another until it is killed, as the local workbook does after each change. */
export async function saveThroughTheStore(path: string, from: number): Promise<void> {
  const store = fileStore({ path, sample: path, own });
  const { opening } = (await store.opened())!;
  for (let version = from; ; version++) {
    say(`saving ${version}`);
    await store.save(opening, versionOf(version));
    say(`saved ${version}`);
  }
}

/**
 * The same with files made beforehand, so that every kill falls among the disk's own steps. Their
 * versions take turns, starting with the one that does not stand there.
 */
export async function saveToTheDisk(path: string, from: number, made: string): Promise<void> {
  for (let version = from; ; version = version === 2 ? 3 : 2) {
    const bytes = readFileSync(join(made, `${version}.xlsx`));
    say(`saving ${version}`);
    const saved = saveSafely(path, bytes, stampOf(path));
    if (!saved.ok) throw new Error(saved.refusal.code);
    say(`saved ${version}`);
  }
}
