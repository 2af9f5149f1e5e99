import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { saveSafely, stampOf } from "../../../src/local-host/files/save-safely";
import { unfinishedName } from "../../../src/local-host/files/sweep-unfinished";

test("what a killed program left of a save goes with the next one; a running program's stays, and so does all else", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdline-sweep-"));
  try {
    const path = join(folder, "Log.xlsx");
    const ended = spawnSync(process.execPath, ["-e", ""]).pid;
    const [left, running] = [unfinishedName(path, ended), unfinishedName(path, process.ppid)];
    const others = [".Log.xlsx.saving-mine", ".Other.xlsx.saving-1", "Log.csv"];
    for (const file of [path, left, running, ...others.map((name) => join(folder, name))])
      writeFileSync(file, "rows");
    expect(saveSafely(path, new TextEncoder().encode("new"), stampOf(path)).ok).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["Log.xlsx", basename(running), ...others].sort());
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
