import type { FarOffSet } from "../coaching/hold/season-hold";
import { countWords, grouped, trimmed, withinSentence } from "./reasons-figures";
import { whoseName } from "./row-issues";

/** The row check of a table with nothing to mend. */
export const allRowsRead = "all rows read";
/** Of a workbook without a row: it has none that could be mended either. */
const noRowsFound = "No rows found yet";

/** "1204 of 1211 rows read" */
export function rowsReadWords(read: number, filled: number, ofNobody: number): string {
  const nobody = ofNobody === 0 ? "" : `, ${rowsOfNobodyWords(grouped(ofNobody))}`;
  return filled === 0
    ? noRowsFound
    : `${grouped(read)} of ${countWords(filled, "row")} read${nobody}`;
}

/** "3 rows under a name that is not among the athletes", of "3 rows". */
export const rowsOfNobodyWords = (rows: string): string =>
  `${rows} under a name that is not among the athletes`;

/** "2 of 3397 rows were not used: 1 not read, 1 under a name that is not among the athletes."; "" where all were. */
export function rowsUnusedWords(
  filled: number,
  { notRead, ofNobody }: { readonly notRead: number; readonly ofNobody: number },
): string {
  const unused = notRead + ofNobody;
  if (unused === 0) return "";
  const why = [
    ...(notRead === 0 ? [] : [`${grouped(notRead)} not read`]),
    ...(ofNobody === 0 ? [] : [rowsOfNobodyWords(grouped(ofNobody))]),
  ];
  return `${grouped(unused)} of ${countWords(filled, "row")} ${unused === 1 ? "was" : "were"} not used: ${why.join(", ")}.`;
}

/** What to do about a name that the Athletes table does not have, beside the answers to choose from. */
export function nameQuestionWords(near: readonly string[], ofRace = false): string {
  if (ofRace && near.length === 0)
    return "Name athletes, a group of the Athletes table, or all; or say here who this is.";
  return near.length === 0
    ? "Say here who this is, or that they are not in the squad; or correct the name, or add the athlete to the Athletes table."
    : whoseName(
        near.join(" or "),
        "Say so under Rows in the sidebar, or correct the name in its cells.",
      );
}

/** A tab that looks like a table, before the coach has said whether it is. */
export const tabToConfirmWords = {
  found: "a table?",
  toDo: (tables: readonly string[]): string =>
    `Looks like ${tables.join(" and ")}. Say under Set up whether it is, and which column is which.`,
  why: "None of its rows count yet.",
} as const;

/** Tabs no table was found in, for whoever expected one. */
export const leftAloneWords = (tabs: readonly string[]): string =>
  `Left alone: ${tabs.map((tab) => `“${tab}”`).join(", ")}. If one is a table, say which under Set up.`;

/** A set far off all others of its athlete: what stands there, and what the athlete usually shows. */
export const lookWords = {
  found: ({ loadKg, speed }: Pick<FarOffSet["set"], "loadKg" | "speed">): string =>
    `${trimmed(loadKg, 2)} kg at ${speed.toFixed(2)} m/s`,
  toDo: ({ set, usualSpeed, usualKg }: FarOffSet): string => {
    const usual = [
      usualSpeed === null ? "" : `${usualSpeed.toFixed(2)} m/s at that load`,
      usualKg === null ? "" : `${trimmed(usualKg, 0)} kg at that speed`,
    ].filter((one) => one !== "");
    return `${set.set.athlete}, ${withinSentence(set.set.exercise)}: usually ${usual.join(" or ")}. Correct it, or say it is right.`;
  },
  why: "A slip would spoil figures.",
} as const;

/** A lift that may be another's slip. */
type MayBeSlip = { readonly written: string; readonly rows: number } & {
  readonly near: string;
  readonly nearRows: number;
};
export const nearLiftWords = {
  why: ({ near }: MayBeSlip): string =>
    `It counts as a lift of its own, beside ${withinSentence(near)}.`,
  toDo: ({ rows, near, nearRows }: MayBeSlip): string =>
    `In ${countWords(rows, "row")}; “${near}” in ${nearRows}. Correct it where it is a slip, or say it is right.`,
  right: ({ written, near }: MayBeSlip): string =>
    `${withinSentence(written)} beside ${withinSentence(near)}`,
} as const;

/** Words of writing one proposed value. */
export const mendWords = {
  done: (tab: string, cell: string, before: string, mend: string): string =>
    `${tab} ${cell}: ${before} is now ${mend}. Undo takes it back.`,
  already: (tab: string, cell: string, mend: string): string =>
    `${tab} ${cell} holds ${mend} already.`,
  /** `found` as it was listed, in its quotation marks. */
  changedSince: (cell: string, holds: string, found: string): string => {
    const now = holds === "" ? "is blank" : `holds “${holds}”`;
    return now.endsWith(found)
      ? `${cell} is not asked about any more. Nothing was written: check again.`
      : `${cell} ${now} now; ${found} was listed. Nothing was written: check again.`;
  },
} as const;
