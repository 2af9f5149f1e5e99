import type { Day } from "../calendar/day";

export type RunKind = "easy" | "long" | "interval" | "race pace";

/** One run, done or planned. */
export type Run = {
  readonly row: number;
  readonly day: Day;
  /** Minutes after midnight, when the row says. */
  readonly minute: number | null;
  readonly athlete: string;
  readonly kind: RunKind | null;
  readonly minutes: number | null;
  /** 0–10. */
  readonly exertion: number | null;
  readonly km: number | null;
};
