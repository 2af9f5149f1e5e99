import fc from "fast-check";
import {
  type DayPlan,
  decideToday,
  type SeenToday,
} from "../../../src/coaching/next-week/decide-today";
import type { Plate } from "../../../src/coaching/record/plate";
import { dayDecisionWords } from "../../../src/words/day-load";

const plan: DayPlan = {
  plannedKg: 80,
  setsLeft: 2,
  usualSpeed: 0.64,
  stepKg: 2.5,
  usualDrop: 0.1,
  gym: null,
};
const speeds = (...sets: number[][]): SeenToday => ({ kind: "speeds", sets });
const say = (seen: SeenToday, over: Partial<DayPlan> = {}, atKg: number | null = 80) => {
  const answer = decideToday(seen, { ...plan, ...over });
  return answer.ok ? dayDecisionWords(answer.value, atKg) : answer.refusal.code;
};

test("within 0.05 m/s of usual the plan stands; from 0.06 faster nothing is added", () => {
  expect(say(speeds([0.59, 0.59]))).toBe("as planned: lift 80");
  expect(say(speeds([0.69]))).toBe("as planned: lift 80");
  expect(say(speeds([0.7]))).toBe("above usual: lift 80 as planned, add nothing");
});

test("0.06 to 0.10 slower: 5 % off, rounded down, the real share said", () => {
  // 5 % of 80 is 4 kg; in steps of 2.5 two steps: 75 kg, 6.25 % off.
  expect(say(speeds([0.57]))).toBe(
    "75 kg for the remaining 2 sets (−6.3 %): 0.07 m/s slower than usual at 80",
  );
  // One plate step from 25 kg is 20 % of nothing less than 5 kg.
  expect(say(speeds([0.57]), { plannedKg: 25, stepKg: 5, setsLeft: 1 }, 25)).toBe(
    "20 kg for the remaining 1 set (−20 %): 0.07 m/s slower than usual at 25",
  );
});

test("more than 0.10 slower: the marker once more, and the better set decides", () => {
  // 10 % of 80 is 8 kg: four steps of 2.5, 70 kg, 12.5 % off.
  expect(say(speeds([0.51]))).toBe(
    "repeat the marker once: 0.13 m/s slower than usual at 80; if it stays slow, 70 kg (−12.5 %)",
  );
  expect(say(speeds([0.51], [0.52]))).toBe(
    "70 kg for the remaining 2 sets (−12.5 %): 0.12 m/s slower than usual at 80",
  );
  expect(say(speeds([0.51], [0.6]))).toBe("as planned: lift 80");
});

test("beyond 0.15 slower, or ill: no heavy work; a set with one odd repetition is repeated first", () => {
  expect(say(speeds([0.48]))).toBe("no heavy work today: 0.16 m/s slower than usual at 80");
  expect(say({ kind: "by eye", word: "ill" })).toBe("no heavy work today: ill");
  expect(say(speeds([0.62, 0.3, 0.5]))).toMatch(/^repeat the marker once/);
});

test("by eye: slow takes the squad's usual share off", () => {
  expect(say({ kind: "by eye", word: "slow" }, { usualSpeed: null })).toBe(
    "70 kg for the remaining 2 sets (−12.5 %): slow by eye",
  );
  expect(say({ kind: "by eye", word: "usual" }, { usualSpeed: null })).toBe("as planned: lift 80");
  expect(say({ kind: "by eye", word: "fast" }, { usualSpeed: null })).toMatch(/add nothing$/);
  expect(say(speeds([0.6]), { usualSpeed: null })).toBe("usual-speed-missing");
});

test("before the set the cell tells the speed that keeps the plan, and that speed keeps it", () => {
  expect(say({ kind: "nothing" })).toBe("0.59 or faster: lift 80");
  expect(say(speeds([0.58]))).not.toMatch(/^as planned/);
});

const plates: readonly Plate[] = [20, 10, 5, 2.5, 1.25].map((massKg) => ({
  row: 1,
  massKg,
  thicknessCm: 2,
  owned: 4,
}));

test("whatever is typed: never above the plan, always on plates that exist, faster never lifts more", () => {
  const one = fc.integer({ min: 20, max: 130 }).map((n) => n / 100);
  const set = fc.array(one, { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(
      fc.array(set, { minLength: 1, maxLength: 2 }),
      one,
      fc.integer({ min: 9, max: 50 }),
      fc.boolean(),
      (sets, usualSpeed, steps, inGym) => {
        const plannedKg = steps * 2.5;
        const gym = inGym ? { plates, barKg: 20 } : null;
        const answer = decideToday(speeds(...sets), { ...plan, plannedKg, usualSpeed, gym });
        if (!answer.ok) throw new Error(answer.refusal.code);
        const { value } = answer;
        if (value.kind === "as planned") expect(value.loadKg).toBe(plannedKg);
        if (value.kind !== "lighter") return;
        expect(value.loadKg).toBeLessThan(plannedKg);
        expect(value.share).toBeCloseTo(1 - value.loadKg / plannedKg, 12);
        expect((value.loadKg / 2.5) % 1).toBe(0);
        if (gym) expect(20 + 2 * value.plates.reduce((a, b) => a + b, 0)).toBe(value.loadKg);
      },
    ),
  );
});
