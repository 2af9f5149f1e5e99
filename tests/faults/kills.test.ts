import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../..");

test("killed at random moments of saving, the file opens whole each time: npm run test:kills does it 500 times", () => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["tests/run.mjs", "tests/faults/kills/main.ts", "20", "2026"],
    { cwd: root, encoding: "utf8" },
  );
  process.stdout.write(stdout);
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout).toMatch(/^20 kills \(seed 2026\): the file opened whole 20 times/);
});
