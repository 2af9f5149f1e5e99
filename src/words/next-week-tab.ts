import { dayFromIso } from "../coaching/calendar/day";
import { dayWords, weekdayWords } from "./days";
import type { NumberStyle } from "./printed-numbers";

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

/** A heading where masses are in a unit: "Load lb". */
export function headingIn(
  column: keyof typeof nextWeekHeadings,
  unit: NumberStyle["unit"],
): string {
  return nextWeekHeadings[column].replace(/kg$/, unit);
}

/**
 * "Next week: 29 Jun to 5 Jul" for one week, "Weeks of 29 Jun and 6 Jul" for more.
 *
 * @param mondays "2026-06-29", in order
 */
export function weekTitleWords(mondays: readonly string[]): string {
  const days = mondays.flatMap((iso) => dayFromIso(iso) ?? []);
  const [first] = days;
  if (days.length === 1) return `Next week: ${dayWords(first!)} to ${dayWords(first! + 6)}`;
  const shown = days.map(dayWords);
  return `Weeks of ${shown.slice(0, -1).join(", ")} and ${shown[shown.length - 1]}`;
}

/** Whether a title is one of ours word for word; any other is the coach's. */
export function isWeekTitle(text: string): boolean {
  const day = "\\d{1,2} [A-Z][a-z]{2}";
  return new RegExp(`^(Next week: ${day} to ${day}|Weeks of ${day}(, ${day})* and ${day})$`).test(
    text,
  );
}

const rows = (count: number) => `${count} ${count === 1 ? "row" : "rows"}`;

/** What writing did, or would do: "3 rows new, 1 row changed. Yours, kept: G7." */
export function weekDifferenceWords(counts: {
  readonly added: number;
  readonly changed: number;
  readonly removed: number;
  readonly same: number;
  readonly kept: readonly string[];
  readonly deleted: readonly DeletedLine[];
}): string {
  const parts = [
    counts.added > 0 ? `${rows(counts.added)} new` : "",
    counts.changed > 0 ? `${rows(counts.changed)} changed` : "",
    counts.removed > 0 ? `${rows(counts.removed)} taken out` : "",
    counts.same > 0 ? `${rows(counts.same)} the same` : "",
  ].filter((part) => part !== "");
  const sentence = parts.length === 0 ? "No rows." : `${parts.join(", ")}.`;
  return [sentence, keptWords(counts.kept), deletedWords(counts.deleted)]
    .filter((part) => part !== "")
    .join(" ");
}

/** Whose row was deleted, and of which day, "2026-06-30". */
type DeletedLine = { readonly athlete: string; readonly day: string };

/** "Oona Petrakell, Tue 30 Jun" */
export const deletedLineWords = ({ athlete, day }: DeletedLine): string =>
  `${athlete}, ${isoDayWords(day)}`;

/** "Deleted in the tab, not written again: Oona Petrakell, Tue 30 Jun." */
function deletedWords(lines: readonly DeletedLine[]): string {
  if (lines.length === 0) return "";
  const shown = lines.slice(0, 4).map(deletedLineWords);
  const more = lines.length > 4 ? ` and ${lines.length - 4} more` : "";
  return `Deleted in the tab, not written again: ${shown.join("; ")}${more}.`;
}

/** Of one athlete's line, beside what is proposed: "Deleted in the tab, not written again: Tue 30 Jun." */
export const deletedDaysWords = (days: readonly string[]): string =>
  `Deleted in the tab, not written again: ${days.map(isoDayWords).join(", ")}.`;

const isoDayWords = (iso: string) => weekdayWords(dayFromIso(iso)!);

/** "Yours, kept: G7, H9." */
function keptWords(cells: readonly string[]): string {
  if (cells.length === 0) return "";
  const shown = cells.slice(0, 12).join(", ");
  return `Yours, kept: ${shown}${cells.length > 12 ? ` and ${cells.length - 12} more` : ""}.`;
}

/** Of one athlete's line, beside what is proposed: "Yours in the tab, not as proposed here: G7." */
export const ownCellsWords = (cells: readonly string[]): string =>
  `Yours in the tab, not as proposed here: ${cells.join(", ")}.`;

/** "Taken back: 14 rows. Yours, kept: C9." */
export function takenBackWords(removed: number, kept: readonly string[]): string {
  const sentence =
    removed === 0
      ? "No row was taken back; the week is proposed afresh."
      : `Taken back: ${rows(removed)}.`;
  return `${sentence} ${keptWords(kept)}`.trim();
}

/** The tab with our name holds something else. */
export function notOurTabWords(tab: string, missing: readonly string[]): string {
  return `The tab ${tab} has no heading ${missing.map((one) => `“${one}”`).join(", ")}. Nothing was written. Put it back, or rename the tab and write again.`;
}

/** A line stands twice, so neither can be replaced safely. */
export function tabGoneWords(tab: string): string {
  return `The tab ${tab} was not found a moment ago. Ask again; what was written stays.`;
}

export function lineTwiceWords(tab: string, line: string, rows: readonly number[]): string {
  return `In ${tab}, the line “${line}” stands in rows ${rows.join(" and ")}. Nothing was written. Delete one and write again.`;
}

/** What a writing would do to the tab, by the names of its lines. */
type WritingTold = {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly removed: readonly string[];
  readonly same: readonly string[];
  readonly kept: readonly string[];
  readonly deleted: readonly DeletedLine[];
};

/** Whether writing would change nothing: the week stands in the tab as it is proposed. */
export const standsAsProposed = ({ added, changed, removed, same }: WritingTold): boolean =>
  same.length > 0 && added.length + changed.length + removed.length === 0;

/** What a writing would do, with the names whose lines change, said before it is done. */
export function ifWrittenWords(merge: WritingTold): string {
  const { added, changed, removed, same, kept, deleted } = merge;
  if (standsAsProposed(merge)) {
    const written =
      same.length === 1
        ? "Written: 1 row stands in Next week."
        : `Written: ${rows(same.length)} stand in Next week.`;
    return [written, keptWords(kept), deletedWords(deleted)]
      .filter((part) => part !== "")
      .join(" ");
  }
  const counts = { added: added.length, changed: changed.length, removed: removed.length };
  const words = weekDifferenceWords({ ...counts, same: same.length, kept, deleted });
  const named = (heading: string, names: readonly string[]) => {
    const athletes = [...new Set(names.map((name) => name.replace(/^\S+ (.*) \d+$/, "$1")))];
    const more = athletes.length > 4 ? ` and ${athletes.length - 4} more` : "";
    return athletes.length === 0 ? "" : ` ${heading}: ${athletes.slice(0, 4).join(", ")}${more}.`;
  };
  return `If written: ${words}${named("New", added)}${named("Changed", changed)}${named("Taken out", removed)}`;
}

const fieldWords: Readonly<Record<string, string>> = {
  sessions: "sessions",
  day: "day",
  contacts: "contacts",
  stack: "stack",
  noRack: "no rack",
};

/** "Changed by you, kept until taken back: day, contacts." What is set of load, sets and block tells by itself. */
export function byHandWords(fields: readonly string[]): string {
  const words = fields.map((field) => fieldWords[field] ?? field);
  return `Changed by you, kept until taken back: ${words.join(", ")}.`;
}

export const leftOutWords = "Left out by you.";
