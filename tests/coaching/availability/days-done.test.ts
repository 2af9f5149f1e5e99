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

test("a load, repetitions or a speed of a set, a height, a stack or a time of a jump, minutes or kilometres of a run are something done", () => {
  const of = (rows: Partial<Record<"sets" | "jumps" | "runs", object[]>>) =>
    daysDone({
      sets: (rows.sets ?? []).map((over) => ({ ...set(1, null), ...over })),
      jumps: (rows.jumps ?? []).map((over) => ({ ...jump(1, null), ...over })),
      runs: (rows.runs ?? []).map((over) => ({ ...run(1, null), ...over })),
    })("ilka brandmoor")("run").length;
  for (const done of [{ loadKg: 80 }, { reps: 5 }, { setSpeed: 0.5 }, { repSpeeds: [0.5] }])
    expect([done, of({ sets: [{}, done] })]).toEqual([done, 1]);
  const jumped = [{ heightCm: 40 }, { stackKg: [20] }, { contactS: 0.2 }, { flightS: 0.5 }];
  for (const done of jumped) expect([done, of({ jumps: [{}, done] })]).toEqual([done, 1]);
  for (const done of [{ minutes: 45 }, { km: 10 }])
    expect([done, of({ runs: [{}, done] })]).toEqual([done, 1]);
});

test("a run ends what was written beside runs, not what stands in place of a session; rows of words alone end neither", () => {
  const on = daysDone({
    sets: [set(1, 80), set(2, null)],
    jumps: [jump(3, 40), jump(4, null)],
    runs: [run(5, 45), run(6, null)],
  })("ilka brandmoor");
  expect(on("set")).toEqual([1, 3]);
  expect(on("run")).toEqual([1, 3, 5]);
  const ran = daysDone({ sets: [], jumps: [], runs: [run(5, 45)] })("ilka brandmoor");
  expect([ran("set"), ran("run")]).toEqual([[], [5]]);
  const other = daysDone({ sets: [set(1, 80)], jumps: [], runs: [] });
  expect([other("ilka brandmoor")("run"), other("dario quell")("run")]).toEqual([[1], []]);
});
