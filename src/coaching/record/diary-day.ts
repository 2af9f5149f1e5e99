import type { Day } from "../calendar/day";

/** One row of the Diary. Numbers keep the coach's own scale; null is not recorded. */
export type DiaryDay = {
  readonly row: number;
  readonly day: Day;
  /** Minutes after midnight the row was written, when it says. */
  readonly minute: number | null;
  readonly athlete: string;
  /** Hours, the night before. */
  readonly sleepH: number | null;
  readonly sleepQuality: number | null;
  readonly soreness: number | null;
  readonly fatigue: number | null;
  readonly stress: number | null;
  readonly mood: number | null;
  readonly carbsInSession: boolean | null;
  readonly foodNote: string;
  readonly newToday: string;
  readonly note: string;
  readonly private: boolean;
};
