import type { Athlete } from "./athlete";
import type { AvailabilitySpell } from "./availability-spell";
import type { DiaryDay } from "./diary-day";
import type { JumpAttempt } from "./jump-attempt";
import type { LiftingSet } from "./lifting-set";
import type { Plate } from "./plate";
import type { Race } from "./race";
import type { Run } from "./run";
import type { SquadRules } from "./squad-rules";

/** Everything read from a coach's workbook. */
export type SquadRows = {
  readonly athletes: readonly Athlete[];
  readonly availability: readonly AvailabilitySpell[];
  readonly sets: readonly LiftingSet[];
  readonly jumps: readonly JumpAttempt[];
  readonly diary: readonly DiaryDay[];
  readonly runs: readonly Run[];
  readonly races: readonly Race[];
  readonly plates: readonly Plate[];
  readonly rules: SquadRules;
};
