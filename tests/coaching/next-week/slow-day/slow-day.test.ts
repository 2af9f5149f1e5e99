import { slowDay } from "../../../../src/coaching/next-week/slow-day/slow-day";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { day, session } from "../written-squad";

// A day's lighter load is of that day where its leading sets were slow; speeds are invented.

const on = day("2026-05-12");
const all = session("Ilka Brandmoor", "2026-05-12", { sets: 3, reps: 5, loadKg: 60, markerKg: 45 });
const marker = all.find(({ kind }) => kind === "marker")!;
const work = all.find(({ kind }) => kind === "work")!;
const at = (set: LiftingSet, ...repSpeeds: number[]): LiftingSet => ({ ...set, repSpeeds });

/** Usual 0.80 for the marker at 45 kg and 0.60 for a work set at 60 kg, down to 0.70 and 0.55. */
const asked: unknown[] = [];
const lead = (kind: "marker" | "work", loadKg: number, of?: number) => {
  asked.push([kind, loadKg, of]);
  if (kind === "marker" && loadKg === 45) return { usual: 0.8, low: 0.7 };
  return kind === "work" && loadKg === 60 ? { usual: 0.6, low: 0.55 } : null;
};
const slow = (...sets: LiftingSet[]) => slowDay(sets, lead);

test("a marker at the first band of the load drop, or as good as that, is slow", () => {
  // 0.80 less 0.06, and 0.02 by which the usual speed may have moved since.
  expect(slow(at(marker, 0.76, 0.76, 0.76))).toBe(true);
  expect(slow({ ...at(marker), repSpeeds: [0.76, null, 0.76] })).toBe(true);
  expect(slow(at(marker, 0.77, 0.77, 0.77))).toBe(false);
  expect(asked[asked.length - 1]).toEqual(["marker", 45, on]);
});

test("where there is a marker it decides, however the work sets moved; of several the better one", () => {
  const [good, bad] = [at(marker, 0.8, 0.8, 0.8), at(marker, 0.7, 0.7, 0.7)];
  expect(slow(good, at(work, 0.3, 0.3))).toBe(false);
  expect(slow(bad, at(work, 0.6, 0.6))).toBe(true);
  expect(slow(bad, good)).toBe(false);
  expect(slow(bad, at(marker, 0.71, 0.71, 0.71))).toBe(true);
});

test("without one the first work set decides, not the sets after it, nor a warm-up before it", () => {
  const [good, bad] = [at(work, 0.6, 0.6), at(work, 0.5, 0.5)];
  expect(slow(bad, good)).toBe(true);
  expect(slow(good, bad)).toBe(false);
  expect(slow({ ...at(work, 0.9), kind: "warm-up" }, bad)).toBe(true);
  // Out of the athlete's own interval, 0.55, or as good as that.
  expect(slow(at(work, 0.57, 0.57))).toBe(true);
  expect(slow(at(work, 0.58, 0.58))).toBe(false);
});

test("one figure of the set is its speed where no repetitions have theirs; without a speed, a load or a usual speed nothing is slow", () => {
  expect(slow({ ...at(marker), setSpeed: 0.7 })).toBe(true);
  expect(slow({ ...at(marker), setSpeed: 0.8 })).toBe(false);
  expect(slow({ ...at(marker, 0.7, 0.7, 0.7), setSpeed: 0.8 })).toBe(true);
  expect(slow(at(marker))).toBe(false);
  // Nor does it make a slow one beside it any less slow.
  const bad = at(marker, 0.7, 0.7, 0.7);
  expect(slow(at(marker), bad)).toBe(true);
  expect(slow({ ...at(marker, 0.8), loadKg: null }, bad)).toBe(true);
  expect(slow({ ...at(marker, 0.8), loadKg: 50 }, bad)).toBe(true);
  expect(slow({ ...at(marker, 0.5), loadKg: null })).toBe(false);
  expect(slow({ ...at(marker, 0.5), loadKg: 50 })).toBe(false);
  expect(slow()).toBe(false);
});
