import { nameKey } from "../../coaching/record/name-key";
import type { Workbook } from "../workbook";
import { changeAnswers } from "./stored-answers";

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

/** Forgets that a spelling means an athlete; with an athlete named, that it is not that athlete. */
export function forgetName(workbook: Workbook, written: string, not?: string): void {
  const others = (pairs: readonly Pair[]) =>
    pairs.filter(
      (one) =>
        nameKey(one.written) !== nameKey(written) || (not !== undefined && one.athlete !== not),
    );
  changeAnswers(workbook, ({ same, different }) =>
    not === undefined ? { same: others(same) } : { different: others(different) },
  );
}
