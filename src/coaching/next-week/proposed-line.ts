import type { NotProposed, WhoMay } from "../availability/who-may";
import type { Block } from "../blocks/block";
import type { Day } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import type { SquadRows } from "../record/squad-rows";
import type { GymDays } from "../season/gym-days";
import type { WeekKind } from "../season/race-hours";
import type { MassUnit } from "../units/mass";
import type { DropHeight } from "./jumps/drop-height";
import type { JumpSets } from "./jumps/jump-sets";
import type { LineReason } from "./line-reason";
import type { Guard } from "./next-step/reserve-guard";
import type { SessionStep } from "./next-step/session-steps";
import type { DayBand } from "./on-the-day/day-bands";
import type { PresentStep } from "./present-step/present-step";
import type { SessionItem } from "./session/session-plan";
import type { AthleteState } from "./state/athlete-state";

/** A line of the day's decision, and the speed that ends a set at its load, m/s; null where none is known. */
export type SessionBand = DayBand & { readonly speedFloor: number | null };

/** One gym session proposed. */
export type ProposedSession = {
  /** The lift whose session it is: the one the athlete is on, or another done in turn with it. */
  readonly exercise: string;
  /** On the ladder of that lift; false for what is done in turn with it, as a fast day is. */
  readonly onLadder: boolean;
  /** Name of the turn whose session it is, by which its load is set by hand; "" for the week's first turn. */
  readonly turn: string;
  readonly day: Day;
  readonly minute: number;
  readonly block: Block;
  readonly sets: number;
  /** Work sets after the set that decides the day, the marker or else the first of them. */
  readonly setsAfterLead: number;
  readonly reps: number;
  readonly loadKg: number;
  /** What it would be that day with no bar, sets or repetitions set by hand. */
  readonly asProposed: Pick<ProposedSession, "sets" | "reps" | "loadKg">;
  readonly barKg: number;
  readonly plates: readonly number[];
  /** What is done in place of the main lift, and then no load of the ladder counts; null for the lift. */
  readonly instead: SessionItem | null;
  /** With steps by session: what is lifted unless the session before went well. */
  readonly otherwise: SessionStep["otherwise"];
  readonly markerKg: number | null;
  /** m/s; two repetitions under it end the set. */
  readonly speedFloor: number | null;
  readonly stackKg: readonly number[];
  readonly stackCm: number | null;
  /** Why the stack is not the last one cleared, or does not rise; null where there is nothing to say. */
  readonly stackReason: LineReason | null;
  readonly contacts: number;
  /** How the contacts are spent: hops, drop jumps, box jumps. */
  readonly jumps: JumpSets;
  /** The session in its order, with what was swapped and why. */
  readonly items: readonly SessionItem[];
  /** Where drop jumps start from. */
  readonly drop: DropHeight;
  readonly bands: readonly SessionBand[];
  /** Mean of the repetitions of the set that decides, the marker or without one the first work set, on a usual day, m/s; null when not known. */
  readonly usualLeadSpeed: number | null;
  /** Low end of such means usual for this athlete, m/s; null when not known. */
  readonly lowLeadSpeed: number | null;
  /** Repetitions left in reserve, and what tells them; null when nothing does. */
  readonly reserve: { readonly reps: number; readonly from: Guard["from"] } | null;
  /** Hours from the session to the athlete's next race; null without one in three weeks. */
  readonly hoursToRace: number | null;
};

/** One week of one athlete, from rows. */
export type ProposedWeek = {
  readonly athlete: string;
  readonly who: WhoMay;
  readonly not: NotProposed | "no-sets-yet" | "no-day" | null;
  readonly kind: WeekKind;
  readonly exercise: string;
  /** As written in the Athletes table or, where nothing is, as often as the athlete came. */
  readonly sessionsAWeek: number;
  readonly sessions: readonly ProposedSession[];
  readonly reasons: readonly LineReason[];
  readonly days: GymDays | null;
  readonly step: PresentStep | null;
  /** Worth reading before writing. */
  readonly odd: boolean;
};

/** Where an athlete would stand in a week if every session before it is done as planned. */
export type OutlookWeek = Pick<
  ProposedSession,
  "exercise" | "block" | "sets" | "loadKg" | "reserve"
> & {
  readonly monday: Day;
};

export type ProposedLine = ProposedWeek & {
  /** Four weeks from the proposed one, of each lift done in turn by itself; empty when nothing is proposed, without the weeks in which nothing is. */
  readonly outlook: readonly OutlookWeek[];
};

/** What a line is proposed from. */
export type LineGiven = {
  readonly athlete: Athlete | null;
  readonly name: string;
  readonly state: AthleteState;
  readonly rows: SquadRows;
  /** Unit of the coach's masses: bar and plates of a gym that lists none are in it; kg when left out. */
  readonly unit?: MassUnit;
  readonly monday: Day;
  readonly asOf: Day;
  readonly change?: LineChange;
  /** The coach leaves the week out: it is proposed, and the weeks ahead do without it. */
  readonly isLeftOut?: boolean;
  /** What the coach has typed over sessions that were written, or that one was deleted, by a week's Monday and the session's place in it, from 1. */
  readonly typed?: (monday: Day) => ReadonlyMap<number, TypedSession | "deleted">;
  /** What the week as written asked for on a day; undefined where none stands. */
  readonly asked?: (day: Day) => AskedSession | undefined;
  /** What the coach has decided of another week, by its Monday. */
  readonly decided?: (monday: Day) => LineChange | "left out" | undefined;
};

/** What stands in a session's row in place of what was written there; what is left out stands as it was. */
export type TypedSession = {
  readonly loadKg?: number;
  readonly sets?: number;
  readonly reps?: number;
};

/** A session as it was asked for in the written week, by the coach's hand or ours; null where a cell says none. */
export type AskedSession = {
  readonly sets: number | null;
  readonly loadKg: number | null;
  /** The load stands as it was proposed: less than before it was no day's, but the plan. */
  readonly isProposed: boolean;
  /** Of that very day, not of its week alone. */
  readonly isOfDay: boolean;
  /** Sessions written for the week. */
  readonly ofWeek: number;
};

/** What a coach has set by hand of a lift. */
export type Wanted = Partial<Pick<SessionStep, "block" | "loadKg">>;

/** A coach's own wish for a line; what is left out stays as proposed. Block and load are of the week's first turn. */
export type LineChange = Wanted & {
  readonly sets?: number;
  /** Sessions of the week. */
  readonly sessions?: number;
  /** What is set of the week's other turns, by the turn's name. */
  readonly turns?: ReadonlyMap<string, Wanted>;
  readonly day?: Day;
  readonly contacts?: number;
  readonly stackKg?: readonly number[];
  /** No rack for this week's sessions. */
  readonly noRack?: boolean;
};
