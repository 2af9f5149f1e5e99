import { squadHold } from "../../../src/coaching/hold/squad-hold";
import { testDays } from "../../../src/coaching/jumps/test-day";
import { jumpValues } from "../../../src/coaching/readiness/jump-values";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { holdReason } from "../../../src/words/reasons-hold";
import { noteWords } from "../../../src/words/reasons-notes";
import { jumpAttempt, liftingSet, sessionDay } from "../series/invented-season";

/** The same three box jumps every day: best 42, mean 40 cm. */
const three = [38, 40, 42];
const best = [42];
const jumps = (heightsOf: (session: number) => readonly number[], of: Partial<JumpAttempt> = {}) =>
  Array.from({ length: 20 }, (_, session) =>
    heightsOf(session).map((heightCm) =>
      jumpAttempt({ day: sessionDay(session), heightCm: heightCm + 0.4 * (session % 2), ...of }),
    ),
  ).flat();
const hold = (attempts: readonly JumpAttempt[]) => {
  const sets = Array.from({ length: 20 }, (_, session) =>
    liftingSet({ day: sessionDay(session), repSpeeds: [0.7 + 0.01 * (session % 2)] }),
  );
  return squadHold({
    index: squadIndex({ sets, jumps: attempts }, sessionDay(19)),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).all[0]!;
};

test("the best of three at first, all three later: no fall is read, and it is said what is not compared", () => {
  const season = hold(jumps((session) => (session < 8 ? best : three)));
  expect(season.word).toBe("holding");
  expect(season.notes.map(noteWords)).toEqual([
    expect.stringMatching(
      /^12 sessions of box jump from \d+ \w+ with another number of attempts a day \(3; baseline: 1\) are not compared\. New baseline dates in the Athletes table would follow them\.$/,
    ),
  ]);
  expect(holdReason(season)).toContain("; box jump last compared on ");
});

test("all three at first, the best of them later: no rise is read", () => {
  const season = hold(jumps((session) => (session < 8 ? three : best)));
  expect(season.word).toBe("holding");
  expect(season.notes.map(({ facts }) => [facts.before, facts.after])).toEqual([[3, 1]]);
});

test("a true fall under the same number of attempts is found, and so where the baseline has both", () => {
  const fallen = (of: readonly number[], session: number) =>
    of.map((heightCm) => heightCm * (session < 8 ? 1 : 0.93));
  expect(hold(jumps((session) => fallen(best, session))).word).toBe("slipping");
  expect(hold(jumps((session) => fallen(three, session))).word).toBe("slipping");
  const both = hold(jumps((session) => fallen(session % 3 === 0 ? [40] : three, session)));
  expect(both.word).toBe("slipping");
  expect(both.notes).toEqual([]);
});

test("the day of the change is not held against days that kept the best alone", () => {
  const days = testDays(
    jumps((session) => (session < 19 ? best : three)),
    [],
  );
  expect(jumpValues(days, days[19])!.dated.map(({ day }) => day)).toEqual([sessionDay(19)]);
  expect(jumpValues(days, days[18])!.dated).toHaveLength(19);
});

test("of plate stacks the highest counts, however many jumps were written down", () => {
  const stack = { stackKg: [20], cleared: true };
  const plates = [{ row: 2, massKg: 20, thicknessCm: 5, owned: 8 }];
  const days = testDays(
    [0, 1, 1, 1].map((session) => jumpAttempt({ day: sessionDay(session), ...stack })),
    plates,
  );
  expect(jumpValues(days, days[1])!.dated).toHaveLength(2);
});
