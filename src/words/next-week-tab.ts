/** Headings of the `Next week` tab, in their order; a coach may move them and add columns between. */
export const nextWeekHeadings = {
  athlete: "Athlete",
  marker: "Marker kg",
  typed: "Type speed, m/s",
  today: "Lift today",
  day: "Day",
  sets: "Sets × reps",
  load: "Load kg",
  plates: "Plates a side, kg",
  floor: "Speed floor",
  stack: "Stack",
  contacts: "Contacts",
  assistance: "Assistance",
  why: "Why",
  line: "Line",
} as const;

const lines = (count: number) => `${count} ${count === 1 ? "line" : "lines"}`;

/** What writing did, or would do: "3 lines new, 1 line changed. Yours, kept: G7." */
export function weekDifferenceWords(counts: {
  readonly added: number;
  readonly changed: number;
  readonly removed: number;
  readonly same: number;
  readonly kept: readonly string[];
}): string {
  const parts = [
    counts.added > 0 ? `${lines(counts.added)} new` : "",
    counts.changed > 0 ? `${lines(counts.changed)} changed` : "",
    counts.removed > 0 ? `${lines(counts.removed)} taken out` : "",
    counts.same > 0 ? `${lines(counts.same)} the same` : "",
  ].filter((part) => part !== "");
  const sentence = parts.length === 0 ? "No lines." : `${parts.join(", ")}.`;
  return counts.kept.length === 0 ? sentence : `${sentence} ${keptWords(counts.kept)}`;
}

/** "Yours, kept: G7, H9." */
function keptWords(cells: readonly string[]): string {
  const shown = cells.slice(0, 12).join(", ");
  return `Yours, kept: ${shown}${cells.length > 12 ? ` and ${cells.length - 12} more` : ""}.`;
}

/** "Taken back: 14 lines. Yours, kept: C9." */
export function takenBackWords(removed: number, kept: readonly string[]): string {
  const sentence = removed === 0 ? "No line was taken back." : `Taken back: ${lines(removed)}.`;
  return kept.length === 0 ? sentence : `${sentence} ${keptWords(kept)}`;
}

/** The tab with our name holds something else. */
export function notOurTabWords(tab: string, missing: readonly string[]): string {
  return `The tab ${tab} has no heading ${missing.map((one) => `“${one}”`).join(", ")}. Nothing was written. Put it back, or rename the tab and write again.`;
}

/** A line stands twice, so neither can be replaced safely. */
export function lineTwiceWords(tab: string, line: string, rows: readonly number[]): string {
  return `In ${tab}, the line “${line}” stands in rows ${rows.join(" and ")}. Nothing was written. Delete one and write again.`;
}
