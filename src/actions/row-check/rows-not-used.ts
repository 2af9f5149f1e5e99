import { nameKey } from "../../coaching/record/name-key";
import type { ReadWorkbook } from "../read-workbook";

/** How many rows of an athlete have a cell that was not used: the sidebar's number, and paper's. */
export function rowsNotUsed({ issues }: ReadWorkbook, athlete: string): number {
  const key = nameKey(athlete);
  const rows = new Set<string>();
  for (const { tab, issue, athlete: whose } of issues) {
    if (nameKey(whose) === key) rows.add(`${tab.id}|${issue.row}`);
  }
  return rows.size;
}
