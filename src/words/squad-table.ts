import type { Day } from "../coaching/calendar/day";
import { dayWords } from "./days";
import { countWords } from "./reasons-figures";

/** What stands under "may do" where availability says nothing sure. */
export const mayDoWords = {
  notGiven: "not given",
  unread: "unclear: a row was not read",
} as const;

/**
 * "A race in 6 days: Harbour half, 4 Jul.", "Race in 1 day: …": how soon comes first, as a narrow cell
 * shows its beginning.
 */
export function nextRaceWords(
  {
    race,
    day,
    matters,
  }: { readonly race: string; readonly day: Day; readonly matters: string | null },
  today: Day,
): string {
  const kind = matters ? `${matters} race` : "Race";
  return `${kind} in ${countWords(day - today, "day")}: ${race}, ${dayWords(day)}.`;
}

/** Rows with a cell not used whose athlete is not in the list. */
export function rowsBesideWords(rows: number): string {
  return `${countWords(rows, "row")} with a cell not used ${rows === 1 ? "belongs" : "belong"} to nobody in this list.`;
}
