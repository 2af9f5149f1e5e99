import { type Day, mondayOf } from "../../../coaching/calendar/day";
import { nameKey } from "../../../coaching/record/name-key";
import { plainWords } from "../../header/header-words";
import { nameLink } from "../../name/near-name";
import type { SchemeRow } from "../scheme-row";
import type { SetGroup } from "./set-cell";

/** One row's sets as they may be copied later in its week; no groups where the row could not be read. */
export type RememberedSession = {
  readonly athlete: string;
  readonly row: number;
  readonly exercise: unknown;
  readonly groups: readonly SetGroup[];
};

/** Sessions read so far, for "wie Di" and "as Tue": load and scheme of that weekday in the same week. */
export class SessionMemory {
  private readonly byDay = new Map<Day, Map<string, RememberedSession[]>>();
  private readonly latest = new Map<string, RememberedSession>();

  /** Sets numbered so far, by session, lift and kind, and before each row by its cells. */
  private readonly numbered = new Map<string, number>();

  keep(day: Day | null, session: RememberedSession): void {
    const who = nameKey(session.athlete);
    this.latest.set(who, session);
    if (day === null) return;
    const sessions = this.byDay.get(day) ?? new Map<string, RememberedSession[]>();
    this.byDay.set(day, sessions);
    const own = sessions.get(who);
    if (own === undefined) sessions.set(who, [session]);
    else own.push(session);
  }

  /**
   * How many sets of the same session, lift and kind stand in the rows above. A row of several sets typed
   * twice has the numbers of the first: equal rows of one set each are sets of their own.
   */
  setsBefore({ line, day, athlete, shared }: SchemeRow, sets: number): number {
    const of = [shared.exercise, shared.minute, shared.kind].map((one) => plainWords(one?.[0]));
    const session = [day, nameKey(athlete), ...of].join("|");
    const row = session + JSON.stringify(line);
    const again = sets > 1 ? this.numbered.get(row) : undefined;
    if (again !== undefined) return again;
    const before = this.numbered.get(session) ?? 0;
    this.numbered.set(row, before).set(session, before + sets);
    return before;
  }

  /** What a ditto mark repeats: the athlete's session before. */
  before(athlete: string): RememberedSession | null {
    return this.latest.get(nameKey(athlete)) ?? null;
  }

  /**
   * The athlete's rows of that weekday earlier in the week. When the name is not there, those of the one
   * name of that day that is a near spelling; none when there is no such name or more than one.
   */
  onWeekday(athlete: string, weekday: number, day: Day): readonly RememberedSession[] {
    const meant = mondayOf(day) + weekday;
    const sessions = meant < day ? this.byDay.get(meant) : undefined;
    if (sessions === undefined) return [];
    const own = sessions.get(nameKey(athlete));
    if (own !== undefined) return own;
    const near = [...sessions.values()].filter(
      ([other]) => nameLink(athlete, other!.athlete) !== null,
    );
    return near.length === 1 ? near[0]! : [];
  }
}
