import type { Day } from "../../coaching/calendar/day";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import { gymPlates } from "../../coaching/next-week/session/usual-plates";
import { nameKey } from "../../coaching/record/name-key";
import type { Plate } from "../../coaching/record/plate";
import { grouped } from "../../coaching/series/grouped";
import type { PrintedNumbers } from "../../words/printed-numbers";
import type { WeekChange } from "../messages";
import type { MadeWithout } from "../page-messages";
import type { StateOfSquad } from "../squad/state-of-squad";
import { proposedWeek } from "../week/proposed-week";
import type { Workbook } from "../workbook";
import { damagedForPaper, notFollowed } from "./made-without";

/** One athlete's session as it goes to paper. */
export type PrintedSession = { readonly line: ProposedLine; readonly session: ProposedSession };

/** A week as proposed with the coach's changes, with what its pages need beside it. */
export type PrintableWeek = {
  readonly state: StateOfSquad;
  readonly monday: Day;
  readonly lines: readonly { readonly line: ProposedLine; readonly leftOut: boolean }[];
  /** Sessions of those who lift, in order of day and start, then by name. */
  readonly sessions: readonly PrintedSession[];
  /** Days with a set or a jump, each once, whether a speed was taken or not. */
  readonly daysIn: (athlete: string) => readonly Day[];
  readonly plates: readonly Plate[];
  readonly numbers: PrintedNumbers;
  /** What could not be read of what is kept. */
  readonly damaged: MadeWithout["damaged"];
  /** Cells of the Next week tab that are the coach's own. */
  readonly cells: readonly { readonly athlete: string; readonly cell: string }[];
  /** Rows that the coach has deleted there. */
  readonly deleted: readonly { readonly athlete: string; readonly day: string }[];
};

export function printableWeek(
  workbook: Workbook,
  today: Day,
  monday: Day | null,
  changes: readonly WeekChange[],
): PrintableWeek {
  const week = proposedWeek(workbook, today, monday, changes);
  const { rows } = week.state.read;
  const done = grouped(
    [...rows.sets, ...rows.jumps].filter(({ day }) => day <= week.state.asOf),
    ({ athlete }) => nameKey(athlete),
  );
  const sessions = week.lines
    .filter(({ leftOut }) => !leftOut)
    .flatMap(({ line }) => line.sessions.map((session) => ({ line, session })))
    .sort(
      (a, b) =>
        a.session.day - b.session.day ||
        a.session.minute - b.session.minute ||
        (a.line.athlete < b.line.athlete ? -1 : 1),
    );
  return {
    ...week,
    sessions,
    plates: gymPlates(rows.plates, week.state.numbers.unit),
    numbers: week.state.numbers,
    damaged: damagedForPaper(workbook),
    ...notFollowed(workbook, week),
    daysIn: (athlete) => [...new Set((done.get(nameKey(athlete)) ?? []).map(({ day }) => day))],
  };
}

/** Sessions that share a room: the same day and start. */
export function gymSessions(week: PrintableWeek): readonly (readonly PrintedSession[])[] {
  const byStart = grouped(week.sessions, ({ session }) => `${session.day} ${session.minute}`);
  return [...byStart.values()];
}
