import * as disk from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Disk, saveSafely, stampOf } from "../../../src/local-host/files/save-safely";

let folder = "";
let path = "";
const oldText = "the old rows";
const newText = "the new rows, which are longer";
const bytes = new TextEncoder().encode(newText);

beforeEach(() => {
  folder = disk.mkdtempSync(join(tmpdir(), "holdline-save-"));
  path = join(folder, "Log.xlsx");
  disk.writeFileSync(path, oldText);
});
afterEach(() => disk.rmSync(folder, { recursive: true, force: true }));

const text = (file = path) => disk.readFileSync(file, "utf8");
const steps = [
  "openSync",
  "writeSync",
  "fsyncSync",
  "closeSync",
  "chmodSync",
  "renameSync",
] as const;

/** A disk on which the machine stops before a step: nothing is done from then on, not even tidying. */
function stoppingAt(step: (typeof steps)[number], after: boolean): Disk {
  let stopped = false;
  const real: Readonly<Record<string, unknown>> = { ...disk };
  const wrapped = Object.fromEntries(
    [...steps, "unlinkSync" as const].map((name) => [
      name,
      (...args: unknown[]) => {
        if (stopped) throw new Error("the machine has stopped");
        const act = real[name] as (...args: unknown[]) => unknown;
        if (name !== step) return act(...args);
        stopped = true;
        if (after) act(...args);
        throw new Error("the machine stopped");
      },
    ]),
  );
  return { ...disk, ...wrapped };
}

test("a save puts the new file in the old one's place and tells its stamp", () => {
  const saved = saveSafely(path, bytes, stampOf(path));
  expect(saved).toEqual({ ok: true, value: stampOf(path) });
  expect(text()).toBe(newText);
  expect(disk.readdirSync(folder)).toEqual(["Log.xlsx"]);
});

test.each(steps.flatMap((step) => [[step, false] as const, [step, true] as const]))(
  "when the machine stops at %s (done: %p) the old or the new file is there, whole",
  (step, after) => {
    const saved = saveSafely(path, bytes, stampOf(path), stoppingAt(step, after));
    expect(saved).toMatchObject({ ok: false, refusal: { code: "not-written" } });
    expect([oldText, newText]).toContain(text());
    // The next save is not disturbed by what the last one left.
    const again = new TextEncoder().encode("once more");
    expect(saveSafely(path, again, stampOf(path)).ok).toBe(true);
    expect(text()).toBe("once more");
    expect(disk.readdirSync(folder)).toEqual(["Log.xlsx"]);
  },
);

test("a disk that takes only part of each write still gets the whole file", () => {
  const slow: Disk = {
    ...disk,
    writeSync: ((file: number, part: Uint8Array, at: number) =>
      disk.writeSync(file, part, at, Math.min(3, part.length - at))) as Disk["writeSync"],
  };
  expect(saveSafely(path, bytes, stampOf(path), slow).ok).toBe(true);
  expect(text()).toBe(newText);
});

test("a full disk leaves the old file and no rest of the new one", () => {
  const full: Disk = {
    ...disk,
    writeSync: (() => {
      throw new Error("ENOSPC: no space left on device");
    }) as Disk["writeSync"],
  };
  expect(saveSafely(path, bytes, stampOf(path), full)).toEqual({
    ok: false,
    refusal: { code: "not-written", facts: { path, reason: "ENOSPC: no space left on device" } },
  });
  expect(text()).toBe(oldText);
  expect(disk.readdirSync(folder)).toEqual(["Log.xlsx"]);
});

test("a file changed by another program is never overwritten", () => {
  const stamp = stampOf(path);
  disk.writeFileSync(path, "another's rows");
  expect(saveSafely(path, bytes, stamp)).toEqual({
    ok: false,
    refusal: { code: "changed-on-disk", facts: { path } },
  });
  expect(text()).toBe("another's rows");
});

test("a change of the same length at the same time of day is noticed too", () => {
  const stamp = stampOf(path)!;
  disk.writeFileSync(path, oldText.toUpperCase());
  disk.utimesSync(path, new Date(stamp.mtimeMs), new Date(stamp.mtimeMs));
  expect(saveSafely(path, bytes, stamp)).toMatchObject({ refusal: { code: "changed-on-disk" } });
});

test("a change while the new file is being written is noticed before the old one goes", () => {
  const meanwhile: Disk = {
    ...disk,
    chmodSync: (file, mode) => {
      disk.chmodSync(file, mode);
      disk.writeFileSync(path, "another's rows");
    },
  };
  expect(saveSafely(path, bytes, stampOf(path), meanwhile)).toMatchObject({
    refusal: { code: "changed-on-disk" },
  });
  expect(text()).toBe("another's rows");
  expect(disk.readdirSync(folder)).toEqual(["Log.xlsx"]);
});

test("a file that is only touched is not changed", () => {
  const stamp = stampOf(path);
  disk.utimesSync(path, new Date(0), new Date(0));
  expect(saveSafely(path, bytes, stamp).ok).toBe(true);
});

test("a file that went away, and one that is in the way, are said", () => {
  const stamp = stampOf(path);
  expect(saveSafely(path, bytes, null)).toMatchObject({ refusal: { code: "already-there" } });
  disk.unlinkSync(path);
  expect(saveSafely(path, bytes, stamp)).toMatchObject({ refusal: { code: "gone-from-disk" } });
  expect(saveSafely(path, bytes, null).ok).toBe(true);
});

test("a link stays a link, and who may read the file stays as it was", () => {
  const link = join(folder, "link.xlsx");
  disk.symlinkSync(path, link);
  disk.chmodSync(path, 0o640);
  expect(saveSafely(link, bytes, stampOf(link)).ok).toBe(true);
  expect(disk.lstatSync(link).isSymbolicLink()).toBe(true);
  expect(text()).toBe(newText);
  expect(disk.statSync(path).mode & 0o777).toBe(0o640);
});
