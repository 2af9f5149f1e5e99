import type { Outcome } from "../../outcome";
import { refusalSentence } from "../../words/refusals";

/** The value; a refusal is thrown as its sentence, which the spreadsheet shows beside the cell. */
export function thrown<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(refusalSentence(outcome.refusal));
}
