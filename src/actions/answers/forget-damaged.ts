import { recallWords } from "../../words/remembered";
import type { DamagedMemory, Done, KeptMatter } from "../messages";
import { seasonKept } from "../season/season-kept";
import { changesKept } from "../week/coach-changes";
import { writtenKept } from "../week/written-before";
import type { Workbook } from "../workbook";
import type { Kept } from "./kept";
import { answersKept } from "./stored-answers";

const all: Readonly<Record<KeptMatter, Pick<Kept<unknown>, "read" | "forget">>> = {
  answers: answersKept,
  "next week": writtenKept,
  "week changes": changesKept,
  season: seasonKept,
};

/** Which of these can no longer be read. */
export function damagedKept<Matter extends KeptMatter>(
  workbook: Workbook,
  matters: readonly Matter[],
): Matter[] {
  return matters.filter((what) => all[what].read(workbook).damaged);
}

/** The same, each with what that means and what to do. */
export function damagedMemories(
  workbook: Workbook,
  matters: readonly KeptMatter[],
): DamagedMemory[] {
  return damagedOf(damagedKept(workbook, matters));
}

export function damagedOf(matters: readonly KeptMatter[]): DamagedMemory[] {
  return matters.map((what) => ({ what, said: recallWords.damaged[what] }));
}

/** Forgets what can no longer be read, as the coach asked. What can be read again is left. */
export function forgetDamaged(workbook: Workbook, what: KeptMatter): Done {
  return workbook.alone(() => {
    if (!all[what].read(workbook).damaged) return { said: recallWords.readable };
    all[what].forget(workbook);
    return { said: recallWords.forgotten[what] };
  });
}
