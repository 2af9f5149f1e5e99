import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import { type Unit, unitOf } from "../value/units";

/** What loads under this heading are read by; their unit may stand among the words of a scheme, "lb x sets x reps". */
export function loadMeaning(column: Column, otherwise: Unit | null = null): Column {
  const named = /\b(kg|lbs?)\b/.exec(plainWords(column.heading))?.[1];
  return { ...column, unit: column.unit ?? unitOf(named) ?? otherwise };
}
