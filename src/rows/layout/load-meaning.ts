import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import { type Unit, unitOf } from "../value/units";

/** What loads under this heading are read by; their unit may stand among the words of a scheme, "lb x sets x reps". */
export function loadMeaning({ heading, unit }: Column, otherwise: Unit | null = null) {
  const named = /\b(kg|lbs?)\b/.exec(plainWords(heading))?.[1];
  return { unit: unit ?? unitOf(named) ?? otherwise, heading, words: "load" };
}
