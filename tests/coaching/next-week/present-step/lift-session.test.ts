import { liftSessions as sessionsOf } from "../../../../src/coaching/next-week/present-step/lift-session";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { day, session } from "../written-squad";

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
  // Days off after it are none before it.
  expect(sessionsOf(of(5), [tuesday - 5, tuesday, tuesday + 30])[0]!.gap).toBe(5);
});

const lifted = (...loads: number[]) => {
  const [, ...work] = of(...loads.map(() => 5));
  const [one] = liftSessions(work.map((set, at) => ({ ...set, loadKg: loads[at]! })));
  const { sets, loadKg, lastKg, isBuiltUp } = one!;
  return `${sets} from ${loadKg} to ${lastKg}${isBuiltUp ? ", built up" : ""}`;
};

test("sets that rise to a load lifted more than once were its warm-ups, whatever their kind says", () => {
  expect(lifted(40, 50, 60, 60, 60)).toBe("3 from 60 to 60, built up");
  expect(lifted(55, 60, 60)).toBe("2 from 60 to 60, built up");
  expect(lifted(40, 60, 55, 60)).toBe("3 from 60 to 60, built up");
  // A single heaviest set may have been the work, or a try: all count.
  expect(lifted(40, 50, 60)).toBe("3 from 40 to 60");
  expect(lifted(40, 50, 60, 55)).toBe("4 from 40 to 55");
  // Down and up again is no rise to it.
  expect(lifted(50, 40, 60, 60)).toBe("4 from 50 to 60");
  expect(lifted(60, 60, 60)).toBe("3 from 60 to 60");
  expect(lifted(60, 55, 55)).toBe("3 from 60 to 55");
  // Heavier ones after the work are no work that it led up to.
  expect(lifted(60, 60, 60, 70, 70)).toBe("5 from 60 to 70");
});
