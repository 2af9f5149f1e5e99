import type { Workbook } from "../workbook";
import { changeAnswers } from "./stored-answers";

/** Remembers that a set is right as it stands, or forgets it; a set typed otherwise is asked about again. */
export function answerSet(workbook: Workbook, set: string, right: boolean): void {
  changeAnswers(workbook, ({ rightSets }) => ({
    rightSets: [...rightSets.filter((one) => one !== set), ...(right ? [set] : [])],
  }));
}
