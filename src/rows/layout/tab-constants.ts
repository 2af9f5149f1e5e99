import type { FoundHeader } from "../header/find-header";
import { plainWords } from "../header/header-words";
import type { TableName } from "../table-name";
import type { LayoutContext } from "./layout-context";
import { athleteOfTab } from "./tab-athlete";

/** Tables that are often kept in one tab an athlete. */
const byAthlete: ReadonlySet<TableName> = new Set(["Sets", "Jumps", "Diary", "Runs"]);

const ofAbsence = /(?<!\p{L})(?:absen\p{L}*|abwesen\p{L}*|fehlzeiten|holidays?|urlaub)(?!\p{L})/u;

/**
 * Meanings without a column that hold for the whole tab: its athlete, the lift the coach named, and that
 * whoever stands in a tab of absences is out.
 */
export function constantsOf(
  context: LayoutContext,
  found: FoundHeader,
  missing: readonly string[],
): Readonly<Record<string, string>> {
  const { table, tab } = context;
  if (table === "Availability" && missing.includes("mayDo"))
    return ofAbsence.test(plainWords(context.title)) ? { mayDo: "out" } : {};
  if (!byAthlete.has(table)) return {};
  const athlete = missing.includes("athlete") ? athleteOfTab(context, found.row) : null;
  const exercise = missing.includes("exercise") ? tab.exercise : undefined;
  return {
    ...(athlete !== null && { athlete }),
    ...(exercise !== undefined && { exercise }),
  };
}
