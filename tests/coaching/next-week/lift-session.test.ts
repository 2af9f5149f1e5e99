import { liftSessions as sessionsOf } from "../../../src/coaching/next-week/lift-session";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { day, session } from "./written-squad";

const tuesday = day("2026-05-12");
const liftSessions = (sets: readonly LiftingSet[]) => sessionsOf(sets, [tuesday]);

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

test("days since the athlete trained are counted from whatever lift came before", () => {
  const gap = (...gymDays: number[]) => sessionsOf(of(5), [...gymDays, tuesday])[0]!.gap;
  expect([gap(), gap(tuesday - 14, tuesday - 5), gap(tuesday - 14)]).toEqual([0, 5, 14]);
});
