import { exerciseKey } from "../../../coaching/record/exercise-key";
import { nameKey } from "../../../coaching/record/name-key";
import type { SchemeRow } from "../scheme-row";

type Session = { sets: number; readonly rows: Map<string, number> };

/** Counts the sets of each session, lift and kind down a log, so that every row's are numbered on. */
export class SetsBefore {
  private readonly sessions = new Map<string, Session>();

  /**
   * How many sets stand in the rows above. A row of several sets typed twice has the numbers of the first:
   * equal rows of one set each are sets of their own.
   */
  of({ line, day, athlete, shared }: SchemeRow, sets: number): number {
    const lift = exerciseKey(String(shared.exercise?.[0]));
    const key = [day, nameKey(athlete), lift, shared.minute?.[0], shared.kind?.[0]].join("|");
    const session: Session = this.sessions.get(key) ?? { sets: 0, rows: new Map() };
    this.sessions.set(key, session);
    const cells = JSON.stringify(line);
    const typed = sets > 1 ? session.rows.get(cells) : undefined;
    if (typed !== undefined) return typed;
    const before = session.sets;
    session.rows.set(cells, before);
    session.sets += sets;
    return before;
  }
}
