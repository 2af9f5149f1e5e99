import type { AthleteSeason, PlannedWeek } from "../coaching/season/season-plan";
import { dayWords } from "./days";
import { listWords } from "./pages";

/** One sign a week: A, B or C for a week with a race of that weight, a for the week after an A race. */
function sign({ kind, races }: PlannedWeek): string {
  if (kind === "race week") return "A";
  if (races.length > 0) return races.some(({ matters }) => matters === "B") ? "B" : "C";
  return kind === "week after" ? "a" : "·";
}

/** The season in plain signs, four weeks to a group: "··A· ·Aa·". */
export function seasonSigns({ weeks }: AthleteSeason): string {
  return weeks
    .map(sign)
    .join("")
    .replace(/(.{4})(?=.)/g, "$1 ");
}

/** "races for track and road not counted: give the Athletes table with its groups" */
export const groupRacesWords = (whom: readonly string[]): string =>
  `races for ${listWords(whom)} not counted: give the Athletes table with its groups`;

/** "R2 (A) 23 May, R3 (B) 13 Jun"; "no races" without any. */
export function seasonRaces({ weeks }: AthleteSeason): string {
  const races = weeks.flatMap((week) => week.races);
  return races.length === 0
    ? "no races"
    : races
        .map(({ race, matters, day }) => `${race} (${matters ?? "C"}) ${dayWords(day)}`)
        .join(", ");
}
