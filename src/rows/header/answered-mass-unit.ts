import { type Unit, unitOf } from "../value/units";
import type { ColumnAnswers } from "./column-answers";

/** The unit of mass the coach named for any column; in a grid it holds for all loads. */
export function massUnitOf(answers: ColumnAnswers | null): Unit | null {
  for (const { unit } of answers?.columns ?? []) {
    const named = unitOf(unit);
    if (named?.quantity === "mass") return named;
  }
  return null;
}
