import type { DayPlan } from "../../../src/coaching/next-week/on-the-day/day-decision";

/** 80 kg planned where 0.64 m/s is usual, two sets left, any load of the 2.5 kg steps buildable. */
export const plan: DayPlan = {
  plannedKg: 80,
  setsLeft: 2,
  usualSpeed: 0.64,
  stepKg: 2.5,
  usualDrop: 0.1,
  gym: null,
};
