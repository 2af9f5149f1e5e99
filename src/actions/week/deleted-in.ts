import { mondayOfLine } from "./plan-lines";
import type { WeekTab } from "./week-tab";
import type { WrittenBefore } from "./written-before";

/**
 * Whether a line was written to the end and is gone from a week of which others stand. A week that is
 * gone altogether, with its tab or by Undo, is written like a new one.
 */
export function deletedIn(
  { rowOf }: Pick<WeekTab, "rowOf">,
  before: WrittenBefore,
): (name: string) => boolean {
  const weeks = new Set([...rowOf.keys()].map(mondayOfLine));
  return (name) =>
    !rowOf.has(name) && before[name]?.line !== undefined && weeks.has(mondayOfLine(name));
}
