import type { WhoMay } from "../../availability/who-may";
import type { Restart } from "../../blocks/restart";
import type { StepSize } from "../../blocks/step-up";
import type { Day } from "../../calendar/day";
import type { SquadRules } from "../../record/squad-rules";
import type { WeekKind } from "../../season/race-hours";
import type { PresentStep } from "../present-step/present-step";
import type { StateOnLift } from "../state/athlete-state";

/** What an athlete's step for next week depends on. */
export type StepGiven = {
  readonly state: StateOnLift;
  readonly step: PresentStep;
  /** Time off the lift long enough to take something off; null otherwise. */
  readonly rest: Restart | null;
  /** Days without the bar, where more would be taken off without other lifts of the legs meanwhile; null otherwise. */
  readonly lighterDays: number | null;
  readonly guardKg: number | null;
  readonly size: StepSize;
  readonly rules: SquadRules;
  readonly mayDo: WhoMay["mayDo"];
  readonly monday: Day;
  /** Days since a marathon whose easing is not over; null otherwise. */
  readonly marathonDays: number | null;
  /** The last session lies after that marathon. */
  readonly liftedSince: boolean;
  readonly kind: WeekKind;
  /** Out on a day between the last session of any lift and the first of this week. */
  readonly wasOut: boolean;
};
