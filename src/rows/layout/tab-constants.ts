import type { FoundHeader } from "../header/find-header";
import type { TableName } from "../table-name";
import type { LayoutContext } from "./layout-context";
import { athleteOfTab } from "./tab-athlete";

/** Tables that are often kept in one tab an athlete. */
const byAthlete: ReadonlySet<TableName> = new Set(["Sets", "Jumps", "Diary", "Runs"]);

/** Meanings without a column that hold for the whole tab: its athlete, and the lift the coach named. */
export function constantsOf(
  context: LayoutContext,
  found: FoundHeader,
  missing: readonly string[],
): Readonly<Record<string, string>> {
  const { table, tab } = context;
  if (!byAthlete.has(table)) return {};
  const athlete = missing.includes("athlete") ? athleteOfTab(context, found.row) : null;
  const exercise = missing.includes("exercise") ? tab.exercise : undefined;
  return {
    ...(athlete !== null && { athlete }),
    ...(exercise !== undefined && { exercise }),
  };
}
