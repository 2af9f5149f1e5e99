import type { Day } from "../calendar/day";

/** One race and who runs it. */
export type Race = {
  readonly row: number;
  readonly day: Day;
  /** Start, minutes after midnight; null when not recorded (then the start of the day counts). */
  readonly startMinute: number | null;
  readonly race: string;
  /** An athlete's name, a group's name, or "all". */
  readonly who: string;
  /** km; null when not read. */
  readonly distanceKm: number | null;
  readonly surface: string;
  readonly matters: "A" | "B" | "C" | null;
};
