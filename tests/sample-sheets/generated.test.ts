import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import manifest from "../../package.json";
import { chance } from "../../src/local-host/sample-squad/chance";
import { sampleFolder } from "./sample-rows";

test("the sample script writes the very bytes that are kept", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdline-sample-"));
  const [program, ...args] = manifest.scripts.sample.split(" ");
  try {
    execFileSync(program!, [...args, folder], { cwd: join(__dirname, "../..") });
    expect(readdirSync(folder).sort()).toEqual(readdirSync(sampleFolder).sort());
    for (const file of readdirSync(folder)) {
      const made = readFileSync(join(folder, file));
      expect([file, made.equals(readFileSync(join(sampleFolder, file)))]).toEqual([file, true]);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test("the sample stays small enough to read", () => {
  const sizes = readdirSync(sampleFolder).map(
    (file) => readFileSync(join(sampleFolder, file)).length,
  );
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(400_000);
});

test("chance is even and bell-shaped, and the same for the same seed", () => {
  const one = chance(5);
  const other = chance(5);
  const even = Array.from({ length: 20_000 }, () => one.uniform());
  expect(even.slice(0, 50)).toEqual(Array.from({ length: 50 }, () => other.uniform()));
  // Standard errors: 0.002 of the mean, 0.007 of the normal's mean, 0.01 of its variance.
  expect(even.reduce((sum, value) => sum + value, 0) / even.length).toBeCloseTo(0.5, 1.9);
  const bell = Array.from({ length: 20_000 }, () => one.normal());
  const mean = bell.reduce((sum, value) => sum + value, 0) / bell.length;
  const variance = bell.reduce((sum, value) => sum + (value - mean) ** 2, 0) / bell.length;
  expect(Math.abs(mean)).toBeLessThan(0.035);
  expect(Math.abs(variance - 1)).toBeLessThan(0.05);
});
