import { liftSessions } from "../../../src/coaching/next-week/lift-session";
import { session } from "./written-squad";

const of = (...reps: number[]) => {
  const sets = session("Ilka Brandmoor", "2026-05-12", {
    sets: reps.length,
    reps: 5,
    loadKg: 70,
    markerKg: 50,
  });
  const work = sets.filter(({ kind }) => kind === "work");
  return [sets[0]!, ...work.map((set, at) => ({ ...set, reps: reps[at]! }))];
};

test("the most repetitions of a set tell fives from threes, whatever was missed later", () => {
  expect(liftSessions(of(5, 5, 2))[0]!.reps).toBe(5);
  expect(liftSessions(of(3, 3, 2))[0]!.reps).toBe(3);
});

test("a day without a work set with a load is no session; the marker is among all its sets", () => {
  const [marker, ...work] = of(5, 5);
  expect(liftSessions([marker!])).toEqual([]);
  expect(liftSessions(work.map((set) => ({ ...set, loadKg: null })))).toEqual([]);
  const [only, ...others] = liftSessions([marker!, ...work]);
  expect([only!.all.length, only!.work.length, only!.sets, others]).toEqual([3, 2, 2, []]);
});
