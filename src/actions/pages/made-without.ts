import { damagedKept } from "../forget-damaged";
import type { MadeWithout } from "../page-messages";
import { rowsNotUsed } from "../rows-not-used";
import type { Workbook } from "../workbook";
import type { PrintableWeek } from "./printable-week";

/** What can no longer be read of what a printed week rests on. */
export function damagedForPaper(workbook: Workbook): MadeWithout["damaged"] {
  return damagedKept(workbook, ["answers", "week changes"]);
}

/** What a page of these athletes was made without, each named once. */
export function madeWithout(
  { state, damaged }: PrintableWeek,
  athletes: readonly string[],
): MadeWithout {
  const rows = [...new Set(athletes)].flatMap((athlete) => {
    const count = rowsNotUsed(state.read, athlete);
    return count === 0 ? [] : [{ athlete, rows: count }];
  });
  return { damaged, rows };
}
