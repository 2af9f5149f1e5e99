import { columnLetters } from "../a1";
import type { OpenHost } from "../open-host";
import type { WorkbookData } from "../workbook-data";

/** A table of the workbook: which one, on which tab, and its range as a formula writes it. */
export type FoundTable = { readonly table: string; readonly tab: string; readonly range: string };

/** Those with the most needed columns first: another table's rows often pass for a plainer one's. */
const tables = "Sets,Jumps,Availability,Races,Plates,Rules,Runs,Diary,Athletes".split(",");

/**
 * The tables of a workbook. A tab named for a table is that table; any other tab is asked of the
 * add-on's own row check, which knows a table by its header words, and the first that fits counts.
 */
export async function foundTables(
  host: OpenHost,
  { tabs }: WorkbookData,
): Promise<readonly FoundTable[]> {
  const found: FoundTable[] = [];
  const rangeOf = (tab: WorkbookData["tabs"][number]) => {
    const columns = Math.max(1, ...tab.cells.map((line) => line.length));
    return `'${tab.name.replaceAll("'", "''")}'!A:${columnLetters(columns - 1)}`;
  };
  for (const tab of tabs) {
    const table = tables.find((name) => name.toLowerCase() === tab.name.trim().toLowerCase());
    if (table) found.push({ table, tab: tab.name, range: rangeOf(tab) });
  }
  for (const tab of tabs) {
    const formulas = tab.cells.some((line) => line.some((cell) => cell?.formula !== undefined));
    if (tab.cells.length < 2 || formulas || found.some((one) => one.tab === tab.name)) continue;
    const range = rangeOf(tab);
    for (const table of tables.filter((name) => !found.some((one) => one.table === name))) {
      const checked = await host.evaluate(`=ROW_CHECK(${range}, "${table}")`);
      const fits =
        checked.ok && !checked.values.some(([, what]) => /^no (header|column)/.test(String(what)));
      if (!fits) continue;
      found.push({ table, tab: tab.name, range });
      break;
    }
  }
  return found;
}
