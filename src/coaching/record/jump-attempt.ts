import type { Day } from "../calendar/day";

/** One attempt, or one test day's figure, of a jump test. */
export type JumpAttempt = {
  readonly row: number;
  readonly day: Day;
  readonly athlete: string;
  /** As written; compare with `nameKey`. */
  readonly test: string;
  /** Height as recorded, cm. */
  readonly heightCm: number | null;
  /** Plates under the landing, as masses in kg from the bottom ("5x15+5"), empty when none. */
  readonly stackKg: readonly number[];
  /** The stack was cleared; null when the row does not say (a stack written alone was cleared). */
  readonly cleared: boolean | null;
  readonly dropCm: number | null;
  /** Plates dropped from, masses in kg from the bottom, where the drop was written as a stack. */
  readonly dropStackKg?: readonly number[];
  /** Height of the landing above the take-off, cm; null is level. */
  readonly landingCm: number | null;
  readonly contactS: number | null;
  readonly flightS: number | null;
  readonly note: string;
};
