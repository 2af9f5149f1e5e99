import { nameKey } from "../coaching/record/name-key";
import { changeAnswers } from "./stored-answers";
import type { Workbook } from "./workbook";

type Pair = { readonly written: string; readonly athlete: string };

/** Remembers that a spelling means an athlete, or that it is somebody else. */
export function answerName(
  workbook: Workbook,
  written: string,
  athlete: string,
  same: boolean,
): void {
  const isSpelling = (one: Pair) => nameKey(one.written) === nameKey(written);
  changeAnswers(workbook, (before) => {
    const others = before.same.filter((one) => !isSpelling(one));
    if (same) return { same: [...others, { written, athlete }] };
    const different = before.different.filter((one) => one.athlete !== athlete || !isSpelling(one));
    return { same: others, different: [...different, { written, athlete }] };
  });
}

/** Forgets that a spelling means an athlete. */
export function forgetName(workbook: Workbook, written: string): void {
  changeAnswers(workbook, ({ same }) => ({
    same: same.filter((one) => nameKey(one.written) !== nameKey(written)),
  }));
}
