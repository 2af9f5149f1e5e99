import type { PerformanceDay } from "../../../src/coaching/diary/performance-day";
import { gymDay } from "./constructed";

/** Tuesdays only, so that all days are of one weekday. */
export const tuesday = (week: number) => gymDay(2 * week);
export const item = (values: readonly number[], day = tuesday) =>
  ({
    key: "sleep",
    kind: "amount",
    step: 1,
    unit: "h",
    values: new Map(values.map((value, at) => [day(at), value])),
  }) as const;
export const performance = (percents: readonly number[], day = tuesday): PerformanceDay[] =>
  percents.map((percent, at) => ({ day: day(at), percent, size: percent / 3, values: [] }));
export const nights = [7, 6, 8, 7, 5, 7, 9, 7, 6, 8, 7, 7, 5, 8];
export const percents = [1, -2, 3, 0, -4, 1, 2, 0, -3, 2, 1, -1, -5, 4];

/** The same performance with a bar speed of twice it, and a jump on every other day. */
export const twoValues = percents.map(
  (percent, at): PerformanceDay => ({
    day: tuesday(at),
    percent,
    size: percent / 3,
    values: [
      { kind: "bar speed", of: "back squat", percent: 2 * percent, size: percent },
      ...(at % 2 === 0
        ? [{ kind: "jump height", of: "box jump", percent: 0.1 * at, size: 0.1 } as const]
        : []),
    ],
  }),
);
