// Kills a saving process at random moments and opens the file each time: node tests/run.mjs tests/faults/kills/main.ts [kills] [seed].
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readWorkbook } from "../../../src/local-host/files/read-workbook";
import { unfinishedName } from "../../../src/local-host/files/sweep-unfinished";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import { chance } from "./chance";
import { killedWhileSaving } from "./killed-while-saving";
import { saveThroughTheStore, saveToTheDisk } from "./saver";
import { versionOf, wholeVersion } from "./versions";

const savers = { store: saveThroughTheStore, disk: saveToTheDisk } as const;
/** Making a file takes far longer than putting it down: one kill in five is during the whole of a save. */
const waysApart = 5;
type Way = keyof typeof savers;
const [first, ...rest] = process.argv.slice(2);

if (first === "saver") {
  const [way, path, from, made] = rest;
  void savers[way as Way](path!, Number(from), made!);
} else {
  void killMany(Number(first ?? 500), Number(rest[0] ?? process.pid));
}

async function killMany(kills: number, seed: number): Promise<void> {
  const random = chance(seed);
  const folder = mkdtempSync(join(tmpdir(), "holdline-kills-"));
  const path = join(folder, "Log.xlsx");
  const made = mkdtempSync(join(tmpdir(), "holdline-kills-made-"));
  for (const version of [1, 2, 3]) {
    const bytes = await writeXlsx(versionOf(version), null);
    if (!bytes.ok) throw new Error(bytes.refusal.code);
    writeFileSync(version === 1 ? path : join(made, `${version}.xlsx`), bytes.value);
  }
  const counts = { old: 0, new: 0, halfWritten: 0, broken: 0 };
  let standing = 1;
  let most = 0;
  try {
    for (let kill = 0; kill < kills; kill++) {
      const way: Way = kill % waysApart === 0 ? "store" : "disk";
      const from = way === "store" ? standing + 1 : standing === 2 ? 3 : 2;
      const killed = await killedWhileSaving([way, path, String(from), made], random);
      const { begun, ended, complaint } = killed;
      const read = await readWorkbook(path, new Set());
      const version = read.ok ? wholeVersion(read.value.workbook) : null;
      if (existsSync(unfinishedName(path, killed.process))) counts.halfWritten++;
      most = Math.max(most, readdirSync(folder).length - 1);
      if (version !== null && version === (ended ?? standing)) counts.old++;
      else if (version !== null && version === begun) counts.new++;
      else {
        counts.broken++;
        process.stderr.write(
          `kill ${kill} (${way}): begun ${begun}, ended ${ended}, found ${version} ${complaint}\n`,
        );
      }
      standing = version ?? standing;
    }
    process.stdout.write(
      `${kills} kills (seed ${seed}): the file opened whole ${counts.old + counts.new} times, ${counts.old} with the version last saved and ${counts.new} with the one being saved; ${counts.halfWritten} kills left a half-written file beside it, never more than ${most} at once; ${counts.broken} broken\n`,
    );
    if (counts.broken > 0 || kills === 0) process.exitCode = 1;
  } finally {
    for (const one of [folder, made]) rmSync(one, { recursive: true, force: true });
  }
}
