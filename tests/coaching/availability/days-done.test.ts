import { daysDone } from "../../../src/coaching/availability/days-done";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import type { Run } from "../../../src/coaching/record/run";

const athlete = "Ilka Brandmoor";
const set = (day: number, loadKg: number | null) =>
  ({ athlete, day, loadKg, reps: null, setSpeed: null, repSpeeds: [] }) as unknown as LiftingSet;
const jump = (day: number, heightCm: number | null) =>
  ({
    athlete,
    day,
    heightCm,
    stackKg: [],
    contactS: null,
    flightS: null,
  }) as unknown as JumpAttempt;
const run = (day: number, minutes: number | null) =>
  ({ athlete, day, minutes, km: null }) as unknown as Run;

test("a run ends what was written beside runs, not what stands in place of a session; rows of words alone end neither", () => {
  const on = daysDone({
    sets: [set(1, 80), set(2, null)],
    jumps: [jump(3, 40), jump(4, null)],
    runs: [run(5, 45), run(6, null)],
  })("ilka brandmoor");
  expect(on("set")).toEqual([1, 3]);
  expect(on("run")).toEqual([1, 3, 5]);
});
