import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import type { Unit } from "../value/units";
import { massInWords } from "./mass-in-words";

/** What loads under this heading are read by; their unit may stand among the words of a scheme, "lb x sets x reps". */
export function loadMeaning(column: Column, otherwise: Unit | null = null): Column {
  const unit = column.unit ?? massInWords(plainWords(column.heading)) ?? otherwise;
  return { ...column, unit };
}
