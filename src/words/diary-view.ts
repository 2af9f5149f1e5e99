import type { Day } from "../coaching/calendar/day";
import type { DiaryTimeline, MarkKind } from "../coaching/diary/diary-timeline";
import { dayWords } from "./days";
import { countWords, trimmed } from "./reasons-figures";

/** Labels of an athlete's diary in the sidebar. */
export const diaryViewWords = {
  heading: "Diary",
  ask: "Days to ask about",
  differed: "What differed",
  others: "Others",
  answer: (dayName: string) => `Answer for ${dayName}`,
  write: "Write into the Diary",
  goesTo: (cell: string) => `Goes to ${cell}, after what stands there.`,
  reading: "Reading the diary",
  noDays: "No day beyond this athlete's own wobble.",
  noItems: "No diary rows or runs beside this athlete's sessions.",
} as const;

/** What a mark of the picture stands for. */
export const markWords: Readonly<Record<MarkKind, string>> = {
  "pain or illness": "pain or illness words",
  figure: "diary figure far from own usual",
  note: "note or something new",
};

/** "3.2 own wobbles below usual" */
export function sizeWords(size: number): string {
  return `${trimmed(Math.abs(size), 1)} own wobbles ${size < 0 ? "below" : "above"} usual`;
}

/** The picture in words: how many sessions, which were unusual, how many days have which mark. */
export function timelineWords(athlete: string, { sessions, marks }: DiaryTimeline): string {
  const first = sessions[0]!;
  const last = sessions[sessions.length - 1]!;
  const odd = sessions.filter(({ side }) => side !== 0);
  const oddWords =
    odd.length === 0
      ? "none unusual"
      : `unusual: ${odd.map(({ day, side }) => `${dayWords(day)} (${side < 0 ? "slow" : "good"})`).join(", ")}`;
  const counts = (["pain or illness", "figure", "note"] as const).map((kind) => {
    const days = marks.filter((mark) => mark.kind === kind).length;
    return `${markWords[kind]} on ${countWords(days, "day")}`;
  });
  return `${athlete}, ${countWords(sessions.length, "session")} from ${dayWords(first.day)} to ${dayWords(last.day)}; ${oddWords}; ${counts.join(", ")}.`;
}

/** Why an answer cannot be written, and what to do. */
export const noAnswerWords = {
  noTable: () => "No Diary was found. Open Set up and say which tab it is.",
  noRow: (tabs: readonly string[], athlete: string, day: Day) =>
    `${tabs.length === 1 ? tabs[0] : "The diary"} has no row of ${athlete} on ${dayWords(day)}. Add one there, then write the answer.`,
  noNote: (tab: string) =>
    `${tab} has no column for notes. Add one headed “Note”, then write the answer.`,
  formula: (cell: string) =>
    `${cell} is worked out by a formula. Write the answer beside it by hand.`,
  notText: (cell: string) =>
    `${cell} holds a number or a date, not words. Write the answer there by hand.`,
  tooLong: (cell: string) => `${cell} is full. Write the answer into another cell by hand.`,
  nothing: () => "There is no answer to write. Type one first.",
} as const;

/** What was done with an answer. The words themselves stay in the sheet. */
export const answeredWords = {
  written: (cell: string) => `${cell}: the answer is written. Undo takes it back.`,
  stands: (cell: string) => `${cell}: the answer stands there already.`,
} as const;
