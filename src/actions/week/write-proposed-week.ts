import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import type { Done, WeekChange } from "../messages";
import type { Workbook } from "../workbook";
import { rememberChanges } from "./coach-changes";
import { proposedWeek } from "./proposed-week";
import { weekToWrite } from "./week-to-write";
import { putWeek } from "./write-week";

/**
 * Writes the week as it is proposed with the coach's changes, for some athletes or all. The changes
 * are remembered before the first cell is written: a writing that stops half way loses none.
 *
 * @param again lines that the coach has deleted in the tab are written, too
 */
export function writeProposedWeek(
  workbook: Workbook,
  today: Day,
  monday: Day,
  changes: readonly WeekChange[],
  athletes: readonly string[] | null,
  again = false,
): Done {
  // Proposed alone, too: changes another coach has just written are part of this proposal.
  return workbook.alone(() => {
    const week = proposedWeek(workbook, today, monday, changes);
    const written = athletes && new Set(athletes.map(nameKey));
    const about = changes.filter(({ athlete }) => !written || written.has(nameKey(athlete)));
    return putWeek(workbook, { ...weekToWrite(week, athletes), again }, () =>
      rememberChanges(workbook, isoFromDay(monday), about),
    );
  });
}
