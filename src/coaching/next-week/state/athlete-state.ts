import type { Absence } from "../../availability/absences";
import type { Day } from "../../calendar/day";
import type { UnwellDay } from "../../diary/unwell-day";
import type { OtherSetting } from "../../hold/measures/setting-notes";
import type { HoldWord, MovedValue } from "../../hold/season-hold";
import type { LastJump } from "../../jumps/box-jump";
import type { ReadinessWord } from "../../readiness/readiness";
import type { UsualLead } from "./usual-lead";

/** How fast an athlete's loads of one lift usually move. */
export type UsualSpeeds = {
  /** Fastest repetition a load usually moves at, m/s; null without a line. */
  readonly usualSpeed: (loadKg: number) => number | null;
  /** The set that decides the day at that load, marker or first work set; null without a line. */
  readonly usualLead: (kind: "marker" | "work", loadKg: number) => UsualLead | null;
};

/** What the measures say of an athlete on one lift. */
export type LiftState = {
  /** Sets of the last session kept their usual pattern; null when speeds were not taken. */
  readonly heldSpeed: boolean | null;
  /** As in `UsualSpeeds`: the season's baseline for those who hold, recent for novices. */
  readonly usualSpeed: UsualSpeeds["usualSpeed"];
  /** The same; on a day within the baseline as it was known then, from the weeks before it. */
  readonly usualLead: (kind: "marker" | "work", loadKg: number, on?: Day) => UsualLead | null;
  /** Of the latest sessions, whoever it is. */
  readonly recent: UsualSpeeds;
  /** Usual speeds of what a planned day's weekday is trained with, where tools or gyms are used in turn; null elsewhere. */
  readonly onDay?: (day: Day) => UsualSpeeds | null;
  /** How what the usual speeds were taken with differs from the baseline's; null where it does not, or nothing is known. */
  readonly otherSetting: OtherSetting | null;
  /** Cautious end of the strength estimate, kg; null when it is refused. Guards only. */
  readonly strengthLowKg: number | null;
  /** What guards in its place in weeks counted on: what the sets' reserves said before them, kg; null where they said nothing. */
  readonly seenKg?: number | null;
};

/** What the measures say of an athlete, as far as next week's sets depend on it. */
export type AthleteState = LastJump & {
  readonly athlete: string;
  readonly word: HoldWord;
  readonly sinceDay: Day | null;
  /** A value that stands lower by as much as would show, and is not called yet; null without one. */
  readonly fallen: MovedValue | null;
  /** Last session against usual. */
  readonly lastWord: ReadinessWord | null;
  /** What is known of a lift, by its name. */
  readonly ofLift: (exercise: string) => LiftState;
  /** The box jump over the season; null when not tested. */
  readonly jumpWord: HoldWord | null;
  /** How a set moved is written down of anyone in the squad. */
  readonly movementKept: boolean;
  /** Soreness well over the athlete's own usual in the last two days; null when not. */
  readonly soreness: { readonly day: Day; readonly value: number } | null;
  /** Latest of the last three days on which pain or illness was noted; null when none, or answered since. */
  readonly unwellDay: UnwellDay | null;
  /** What was written of an absence and still holds, days to come among it, in order; what names no day last. */
  readonly absences: readonly Absence[];
};

/** The same with what is known of one lift. */
export type StateOnLift = AthleteState & LiftState;

export const onLift = (state: AthleteState, exercise: string): StateOnLift => ({
  ...state,
  ...state.ofLift(exercise),
});
