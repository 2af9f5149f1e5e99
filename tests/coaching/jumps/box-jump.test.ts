import { boxJumps, lastJump } from "../../../src/coaching/jumps/box-jump";
import { jumpAttempt } from "../series/invented-season";

const times = (count: number, test: string) =>
  Array.from({ length: count }, (_, day) => jumpAttempt({ day, test }));
const found = (...tests: readonly (readonly [string, number])[]) =>
  boxJumps(new Map(tests.map(([test, count]) => [test, times(count, test)])))[0]?.test;

test("a box jump is one under any of its names, and a drop from a box is none", () => {
  expect(found(["box jump", 2])).toBe("box jump");
  expect(found(["countermovement jump", 9], ["straight-leg box jump", 2])).toBe(
    "straight-leg box jump",
  );
  expect(found(["box drop jump", 9], ["box jump", 2])).toBe("box jump");
  expect(found(["box drop jump", 9], ["drop jump", 9])).toBeUndefined();
});

test("of two box jumps the one taken more often is followed", () => {
  expect(found(["box jump", 2], ["seated box jump", 3])).toBe("seated box jump");
  expect(found(["seated box jump", 3], ["box jump", 2])).toBe("seated box jump");
  expect(found(["seated box jump", 2], ["box jump", 2])).toBe("seated box jump");
  expect(found(["box jump", 1])).toBe("box jump");
});

test("the stack last cleared under a miss counts, one knocked down does not, nor its height", () => {
  const attempt = (stackKg: readonly number[], cleared: boolean | null, heightCm: number | null) =>
    jumpAttempt({ day: 1, stackKg, cleared, heightCm });
  expect(
    lastJump(
      [attempt([15], true, 30), attempt([15, 10], null, null), attempt([20, 20], false, 44)],
      [],
    ),
  ).toEqual({
    lastStackKg: [15, 10],
    lastJumpCm: 30,
    missedBoxes: [{ day: 1, cm: 44, stackKg: [20, 20] }],
    isBoxLowered: false,
  });
  const none = { missedBoxes: [], isBoxLowered: false };
  // A jump noted without plates, and one without a height, leave what was there before.
  expect(lastJump([attempt([15], true, 30), attempt([], true, null)], [])).toEqual({
    lastStackKg: [15],
    lastJumpCm: 30,
    ...none,
  });
  expect(lastJump([], [])).toEqual({ lastStackKg: [], lastJumpCm: null, ...none });
});
