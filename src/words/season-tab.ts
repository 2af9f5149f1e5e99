import type { PlannedWeek } from "../coaching/season/season-plan";
import { dayWords } from "./days";
import { raceName } from "./race-name";

/** What stands above the weeks of the `Season` tab. */
export const seasonTabWords = {
  title: "Season: each athlete’s weeks, from the first race to the last",
  legend:
    "Race week and week after: of an A race. B and C races are named in the week they fall in; · is a week with none.",
  athlete: "Athlete",
  button: "Write the Season tab",
  help: "One row for each athlete, one column for each week, in a tab of its own. Your own cells there stay.",
  noRaces: "No races were read, so there is no season to write. Add them to a Races tab first.",
  noAthletes: "No athletes were read. Name them in an Athletes tab first.",
} as const;

/** An ordinary week is quiet: most are. */
const kindWords = { ordinary: "·", "race week": "race week", "week after": "week after" };

/** "·", "race week: R2 (A) 23 May", "R3 (B) 13 Jun", "week after" */
export function weekCellWords({ kind, races }: PlannedWeek): string {
  const named = races.map(
    ({ race, matters, day }) => `${raceName(race)} (${matters ?? "C"}) ${dayWords(day)}`,
  );
  if (named.length === 0) return kindWords[kind];
  return kind === "ordinary" ? named.join(", ") : `${kindWords[kind]}: ${named.join(", ")}`;
}

/** "Season: 12 weeks, 234 cells written. Yours, kept: C5."; a length seldom raced is asked about. */
export function seasonWrittenWords(
  weeks: number,
  cells: number,
  kept: readonly string[],
  unusual = false,
): string {
  const done =
    cells === 0
      ? `Season: ${weeks} weeks, nothing to change.`
      : `Season: ${weeks} weeks, ${cells} ${cells === 1 ? "cell" : "cells"} written.`;
  const more = kept.length > 12 ? ` and ${kept.length - 12} more` : "";
  const asked = unusual ? " Most are 16 to 20 weeks: is a race missing, or of another season?" : "";
  const yours = kept.length === 0 ? "" : ` Yours, kept: ${kept.slice(0, 12).join(", ")}${more}.`;
  return `${done}${yours}${asked}`;
}

/** The tab with our name holds something else. */
export function notSeasonTabWords(tab: string): string {
  return `The tab ${tab} has no row with the heading “${seasonTabWords.athlete}”. Nothing was written. Put it back, or rename the tab and write again.`;
}

/** An athlete stands in two rows of the tab. */
export function athleteTwiceWords(tab: string, athlete: string, rows: readonly number[]): string {
  return `In ${tab}, ${athlete} stands in rows ${rows.join(" and ")}. Nothing was written. Delete one and write again.`;
}
