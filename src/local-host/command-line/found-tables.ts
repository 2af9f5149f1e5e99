import type { SetUpView } from "../../actions/messages";
import { columnLetters } from "../a1";
import type { OpenHost } from "../open-host";
import type { WorkbookData } from "../workbook-data";

/** A table of the workbook: which one, on which tab, and its range as a formula writes it. */
export type FoundTable = {
  readonly table: string;
  readonly tab: string;
  readonly range: string;
  /** Not sure: asked about under Set up, and its rows do not count yet. */
  readonly sure: boolean;
};

/** The tables of a workbook as the add-on itself finds them, by header words, whatever a tab's name. */
export function foundTables(
  host: OpenHost,
  { tabs }: WorkbookData,
  today: string,
): readonly FoundTable[] {
  const { tabs: known } = host.run("setUpView", [{ today }]) as SetUpView;
  return known.flatMap(({ tab, table, found }) => {
    const lines = tabs.find(({ name }) => name === tab)?.cells ?? [];
    if (table === null || lines.length === 0) return [];
    const columns = Math.max(1, ...lines.map((line) => line.length));
    const name = `'${tab.replaceAll("'", "''")}'`;
    const sure = found !== "unsure";
    return [{ table, tab, sure, range: `${name}!A:${columnLetters(columns - 1)}` }];
  });
}
