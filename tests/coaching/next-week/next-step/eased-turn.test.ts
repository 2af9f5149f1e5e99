import { easedTurn } from "../../../../src/coaching/next-week/next-step/eased-turn";
import type { PresentStep } from "../../../../src/coaching/next-week/present-step/present-step";
import { day } from "../written-squad";

const monday = day("2026-05-11");
/** Back since Tuesday 5 May at four fifths of 100 kg after three weeks away; Thursdays are fast, 60 kg. */
const step = {
  exercise: "back squat",
  loadKg: 80,
  lastDay: day("2026-05-05"),
  sessionsAWeek: 2,
  sessions: [
    { day: day("2026-04-14"), gap: 3, loadKg: 100 },
    { day: day("2026-05-05"), gap: 21, loadKg: 80 },
  ],
  inTurn: [
    { day: day("2026-04-16"), sets: 5, reps: 3, loadKg: 60 },
    { day: day("2026-05-07"), sets: 3, reps: 3, loadKg: 47.5 },
  ],
} as unknown as PresentStep;
const turn = (over: Partial<Parameters<typeof easedTurn>[1]>) => {
  const usual = { now: false, monday, gradeKg: 2.5, wholeKg: 2.5 };
  const { block, loadKg } = easedTurn(step, { loadKg: 90, ...usual, ...over });
  return `${block.sets}x${block.reps} ${loadKg}`;
};

test("on the way back a fast day is so much of what it was before as the heavy one is", () => {
  // 90 of 100 is the grade: 54 of 60, in whole steps 52.5; all the way back all of it.
  expect([turn({}), turn({ loadKg: 100 })]).toEqual(["5x3 52.5", "5x3 60"]);
});

test("away again it is as far under what it was before the first time as the lift", () => {
  // 72 of 100: 43.2 of 60, in whole steps 42.5.
  expect(turn({ now: true, loadKg: 72 })).toBe("5x3 42.5");
});

test("a break eases what was done last where the load from before an earlier one is reached", () => {
  const whole = { ...step, sessions: step.sessions.map((one) => ({ ...one, loadKg: 80 })) };
  const { loadKg } = easedTurn(whole, {
    loadKg: 72,
    now: true,

    monday,
    gradeKg: 2.5,
    wholeKg: 2.5,
  });
  // Nine tenths of 47.5 are 42.75.
  expect(loadKg).toBe(42.5);
});

test("where nothing is taken off, the load of last time is no other for lying between the gym's whole steps", () => {
  const here = { ...step, sessions: [], inTurn: [{ ...step.inTurn[1]!, loadKg: 48.5 }] };
  const usual = { now: false, monday, gradeKg: 1, wholeKg: 2.5 };
  expect(easedTurn(here, { loadKg: 80, ...usual }).loadKg).toBe(48.5);
  // A tenth off is 43.65.
  expect(easedTurn(here, { loadKg: 72, ...usual, now: true }).loadKg).toBe(42.5);
});
