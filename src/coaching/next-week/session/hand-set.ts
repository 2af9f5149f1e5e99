import type { LineChange, Wanted } from "../proposed-line";

/**
 * What a coach has set by hand of one turn of a week.
 *
 * @param turn its name, "" for the week's first
 */
export const handSet = (change: LineChange, turn: string): Wanted =>
  turn === "" ? change : (change.turns?.get(turn) ?? {});
