import { type Unit, unitOf } from "../value/units";

/** The unit of mass that words in plain lower case name; null where they name none. */
export function massInWords(words: string): Unit | null {
  return unitOf(/\b(kg|lbs?)\b/.exec(words)?.[1]);
}
