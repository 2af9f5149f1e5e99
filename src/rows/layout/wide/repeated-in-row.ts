import { type Day, mondayOf } from "../../../coaching/calendar/day";

/**
 * What a mark in a grid repeats: a ditto what stands to its `left`, "as Tue" what was `done` on that
 * weekday earlier in the week; null where there is nothing to repeat, or the cell is no such mark.
 */
export function repeatedIn<Done>(
  said: { readonly is: string; readonly weekday?: number },
  left: Done | null,
  done: ReadonlyMap<Day, Done>,
  day: Day,
): Done | null {
  if (said.is === "ditto") return left;
  const meant = said.weekday === undefined ? day : mondayOf(day) + said.weekday;
  return meant < day ? (done.get(meant) ?? null) : null;
}
