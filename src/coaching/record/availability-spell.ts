import type { Day } from "../calendar/day";

export type MayDo = "full" | "modified" | "out" | "cleared";

/** One row of the Availability table: a spell in which something is allowed or not. */
export type AvailabilitySpell = {
  readonly row: number;
  readonly athlete: string;
  readonly from: Day;
  /** Last day of the spell; null while it is open. */
  readonly until: Day | null;
  readonly mayDo: MayDo;
  /** Who said so; `cleared` without a name is not cleared. */
  readonly by: string;
  readonly site: string;
  /** 0–10. */
  readonly pain: number | null;
  readonly note: string;
};
