import { type Day, mondayOf } from "../../../coaching/calendar/day";
import { nameKey } from "../../../coaching/record/name-key";
import { nameLink } from "../../name/near-name";
import type { SetGroup } from "./set-cell";

/** One session as it may be copied later in its week. */
export type RememberedSession = {
  readonly athlete: string;
  readonly row: number;
  readonly exercise: unknown;
  readonly groups: readonly SetGroup[];
};

/** Sessions read so far, for "wie Di" and "as Tue": load and scheme of that weekday in the same week. */
export class SessionMemory {
  private readonly byDay = new Map<Day, Map<string, RememberedSession>>();
  private readonly latest = new Map<string, RememberedSession>();

  keep(day: Day | null, session: RememberedSession): void {
    const who = nameKey(session.athlete);
    this.latest.set(who, session);
    if (day === null) return;
    const sessions = this.byDay.get(day) ?? new Map<string, RememberedSession>();
    sessions.set(who, session);
    this.byDay.set(day, sessions);
  }

  /** What a ditto mark repeats: the athlete's session before. */
  before(athlete: string): RememberedSession | null {
    return this.latest.get(nameKey(athlete)) ?? null;
  }

  /**
   * The athlete's session of that weekday earlier in the week. When the name is not there, the one
   * session of that day under a near spelling; null when there is none or more than one.
   */
  onWeekday(athlete: string, weekday: number, day: Day): RememberedSession | null {
    const meant = mondayOf(day) + weekday;
    const sessions = meant < day ? this.byDay.get(meant) : undefined;
    if (sessions === undefined) return null;
    const own = sessions.get(nameKey(athlete));
    if (own !== undefined) return own;
    const near = [...sessions.values()].filter(
      (other) => nameLink(athlete, other.athlete) !== null,
    );
    return near.length === 1 ? near[0]! : null;
  }
}
