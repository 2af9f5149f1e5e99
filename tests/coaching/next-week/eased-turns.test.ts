import { easedTurns } from "../../../src/coaching/next-week/eased-turns";
import type { PresentStep } from "../../../src/coaching/next-week/present-step";
import { day } from "./written-squad";

const monday = day("2026-05-11");
/** Back since Tuesday 5 May at four fifths of 100 kg after three weeks away; Thursdays are the other lift's. */
const step = (otherLast: string, otherKg: number) =>
  ({
    exercise: "back squat",
    loadKg: 80,
    lastDay: day("2026-05-05"),
    sessions: [
      { day: day("2026-04-14"), gap: 3, loadKg: 100 },
      { day: day("2026-05-05"), gap: 21, loadKg: 80 },
    ],
    inTurn: [
      {
        exercise: "hip thrust",
        sets: 3,
        reps: 5,
        loadKg: otherKg,
        lastDay: day(otherLast),
        weekdays: [3],
      },
    ],
  }) as unknown as PresentStep;
const otherKg = (otherLast: string, loadKg: number, lastKg = 90, now = false) => {
  const eased = { loadKg, now, monday, gradeKg: 2.5, wholeKg: 2.5, sessionsAWeek: 2 };
  return easedTurns([monday + 1, monday + 3], step(otherLast, lastKg), eased).get(monday + 3)?.step
    .loadKg;
};

test("on the way back what was not done yet comes back in the lift's grade, what was done since stays as it was", () => {
  // 90 of 100 is the grade: 81 of 90, in whole steps 80.
  expect(otherKg("2026-04-16", 90)).toBe(80);
  expect(otherKg("2026-05-07", 90)).toBe(90);
  // Done on the first day back it was done.
  expect(otherKg("2026-05-05", 90)).toBe(90);
  // 90 of 100 in whole steps are 90; a load as last time is left between steps, where it was.
  expect([otherKg("2026-04-16", 90, 100), otherKg("2026-05-07", 90, 91)]).toEqual([90, 91]);
});

test("away again, what was not done since the first time stands as far under its load as the lift", () => {
  // The lift is at 72 of the 100 kg of before, 10 % under the 80 of its one session since.
  const away = (otherLast: string) => otherKg(otherLast, 72, 90, true);
  expect([away("2026-04-16"), away("2026-05-07")]).toEqual([62.5, 80]);
});
