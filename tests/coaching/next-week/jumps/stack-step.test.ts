import fc from "fast-check";
import { lastJump } from "../../../../src/coaching/jumps/box-jump";
import { stackHeight } from "../../../../src/coaching/jumps/stack-height";
import { jumpPlan } from "../../../../src/coaching/next-week/jumps/jump-plan";
import { oneStepUp } from "../../../../src/coaching/next-week/jumps/one-step-up";
import type { JumpAttempt } from "../../../../src/coaching/record/jump-attempt";
import type { Plate } from "../../../../src/coaching/record/plate";
import { lineReasonWords } from "../../../../src/words/week";
import { jumpAttempt } from "../../series/invented-season";
import { day, state } from "../written-squad";

/** Thicknesses in cm of an invented gym. */
const plates: readonly Plate[] = [
  [25, 4.5, 4],
  [20, 4.3, 16],
  [15, 3.6, 6],
  [10, 2.9, 6],
  [5, 2.2, 6],
  [2.5, 1.6, 8],
  [1.25, 1.2, 6],
].map(([massKg, thicknessCm, owned]) => ({
  row: 0,
  massKg: massKg!,
  thicknessCm: thicknessCm!,
  owned: owned!,
}));
const on20s = (count: number, ...more: number[]) => [...Array<number>(count).fill(20), ...more];
const cmOf = (stackKg: readonly number[]) => {
  const height = stackHeight(stackKg, plates);
  return height.ok ? height.value : Number.NaN;
};

type Try = readonly [iso: string, stackKg: readonly number[], cleared: boolean];
const tried = (tries: readonly Try[]): JumpAttempt[] =>
  tries.map(([iso, stackKg, cleared]) => jumpAttempt({ day: day(iso), stackKg, cleared }));
const after = (
  attempts: readonly JumpAttempt[],
  over: Partial<Parameters<typeof jumpPlan>[0]> = {},
) =>
  jumpPlan({
    experience: "trained",
    noJumps: false,
    eased: false,
    state: state("Ada Brenning", { jumpWord: "rising", ...lastJump(attempts, plates) }),
    plates,
    ...over,
  });
const told = ({ stackReason }: ReturnType<typeof after>) =>
  stackReason && lineReasonWords(stackReason);

test("what was missed on the last jump day holds the stack of whoever rises, and is named", () => {
  const found = after(
    tried([
      ["2026-06-23", on20s(8, 10), true],
      ["2026-06-23", on20s(8, 15), false],
      ["2026-06-25", on20s(8, 2.5), true],
      ["2026-06-25", on20s(8, 5), false],
    ]),
  );
  expect(found).toMatchObject({ stackKg: on20s(8, 2.5), stackCm: 36 });
  expect(told(found)).toBe("Box jump held: 36.6 cm was missed on 25 Jun.");
});

test("with all of the last day cleared, one small step: the topmost plate gives way to the next", () => {
  const found = after(tried([["2026-06-25", on20s(8, 2.5), true]]));
  expect(found).toMatchObject({ stackKg: on20s(8, 5), stackCm: 36.6 });
  expect(told(found)).toBe("Box jump one step up, to 36.6 cm: rising, and nothing so high missed.");
  expect(told(after(tried([["2026-06-25", on20s(8, 2.5), true]]), { eased: true }))).toBeNull();
});

test("what was missed at every try of four weeks is not tried again as the next step", () => {
  const missed = (iso: string): Try => [iso, on20s(8, 5), false];
  const last: Try = ["2026-06-25", on20s(8, 2.5), true];
  const found = after(tried([missed("2026-05-29"), missed("2026-06-18"), last]));
  expect(found.stackKg).toEqual(on20s(8, 2.5));
  expect(told(found)).toBe("Box jump held: 36.6 cm was missed on 18 Jun.");
  // Once cleared within them, or as much as that, it was missed by chance; before them it says nothing.
  const cleared = tried([missed("2026-06-11"), ["2026-06-18", on20s(8, 5), true], last]);
  expect(after(cleared).stackKg).toEqual(on20s(8, 5));
  expect(after(tried([missed("2026-05-28"), last])).stackKg).toEqual(on20s(8, 5));
});

test("a stack cleared before and missed on the last day comes down to the last one cleared under it", () => {
  const found = after(
    tried([
      ["2026-06-16", on20s(8), true],
      ["2026-06-18", on20s(8, 5), true],
      ["2026-06-25", on20s(8, 2.5), false],
    ]),
    { eased: true },
  );
  expect(found.stackKg).toEqual(on20s(8));
  expect(told(found)).toBe("Box jump lower: 36 cm was missed on 25 Jun.");
});

test("with nothing cleared under what was missed no height is guessed", () => {
  const found = after(tried([["2026-06-25", on20s(8), false]]));
  expect(found).toMatchObject({ stackKg: [], stackCm: null });
  expect(told(found)).toBe(
    "Box jump: 34.4 cm was missed on 25 Jun and nothing lower cleared; the height is yours to set.",
  );
});

test("heights kept without plates: no more than the last one cleared under a miss", () => {
  const heights = (...tries: readonly (readonly [iso: string, cm: number, ok: boolean | null])[]) =>
    tries.map(([iso, heightCm, cleared]) => jumpAttempt({ day: day(iso), heightCm, cleared }));
  const found = after(
    heights(["2026-06-18", 40, true], ["2026-06-23", 44, null], ["2026-06-25", 42, false]),
  );
  expect(found).toMatchObject({ stackKg: [], stackCm: 40 });
  expect(told(found)).toBe("Box jump lower: 42 cm was missed on 25 Jun.");
});

test("plates that nobody has measured: a stack with all of a missed one in it is as high", () => {
  const missed: Try = ["2026-06-25", [20, 20, 5], false];
  const of = (...tries: Try[]) => lastJump(tried([...tries, missed]), []).lastStackKg;
  expect(of(["2026-06-18", [20, 20], true], ["2026-06-23", [20, 5, 20, 5], true])).toEqual([
    20, 20,
  ]);
  expect(of(["2026-06-23", [20, 20, 10], true])).toEqual([20, 20, 10]);
  // Of a height that is not known nothing is said to lie under it, and nothing rises.
  const unknown = tried([
    ["2026-06-25", on20s(8, 2.5), true],
    ["2026-06-25", [17, 17], false],
  ]);
  expect(after(unknown).stackKg).toEqual(on20s(8, 2.5));
  expect(told(after(unknown))).toBe("Box jump held: 2×17 was missed on 25 Jun.");
});

test("a step between is built where there is one, and no plate on a lighter one", () => {
  expect(oneStepUp(on20s(8), plates)).toEqual({ stackKg: on20s(7, 10, 5), cm: 35.2 });
  expect(oneStepUp([15, 15, 15, 15, 15, 5], plates)).toEqual({
    stackKg: [15, 15, 15, 15, 15, 10],
    cm: 20.9,
  });
  expect(oneStepUp([], plates)).toBeNull();
  const fives = plates.map((one) => ({ ...one, owned: one.massKg === 5 ? 1 : 0 }));
  expect(oneStepUp([5], fives)).toBeNull();
});

const small = [null, 1.25, 2.5, 5, 10, 15] as const;
const stacks = fc
  .tuple(fc.integer({ min: 4, max: 9 }), fc.constantFrom(...small))
  .map(([count, top]) => on20s(count, ...(top === null ? [] : [top])));
const tries = fc.array(
  fc.tuple(fc.constantFrom("2026-06-16", "2026-06-18", "2026-06-25"), stacks, fc.boolean()),
  { minLength: 1, maxLength: 12 },
);

test("no stack is proposed as high as one missed on the last jump day, nor more than a plate over one cleared", () => {
  const thinnestCm = Math.min(
    ...plates.flatMap(({ massKg, thicknessCm }) => (massKg >= 5 ? [thicknessCm] : [])),
  );
  let rose = 0;
  fc.assert(
    fc.property(tries, (drawn) => {
      const sorted = [...drawn].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
      const { stackKg, stackReason } = after(tried(sorted));
      const [lastDay] = sorted[sorted.length - 1]!;
      const cleared = sorted.flatMap(([, stack, ok]) => (ok ? [cmOf(stack)] : []));
      if (stackKg.length === 0) return;
      const cm = cmOf(stackKg);
      for (const [iso, stack, ok] of sorted) {
        if (iso === lastDay && !ok) expect(cm).toBeLessThan(cmOf(stack));
      }
      expect(cm).toBeLessThanOrEqual(Math.max(...cleared) + thinnestCm + 1e-9);
      if (stackReason?.code === "box-up") rose++;
    }),
    { numRuns: 500 },
  );
  expect(rose).toBeGreaterThan(20);
});
