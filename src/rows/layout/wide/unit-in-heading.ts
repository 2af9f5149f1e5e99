import { plainWords } from "../../header/header-words";
import { type Unit, unitOf } from "../../value/units";
import { jumpTitle } from "./jump-title";

/** Unit of a test's figures as its heading names it; null when it names none. */
export function unitInHeading(heading: string): Unit | null {
  const last = /\b(ms|s|cm|mm|m|in)\b\)?$/.exec(plainWords(heading))?.[1];
  return jumpTitle(heading).parts[0]?.unit ?? unitOf(last);
}
