import type { SquadView } from "../../actions/messages";
import { mayDoWords } from "../../words/squad-table";
import type { OpenHost } from "../open-host";
import type { FoundTable } from "./found-tables";

export const squadAsReadColumns = [
  "Athlete",
  "May do",
  "Word",
  "Since",
  "Last session",
  "Rows not used",
  "Why",
] as const;

/** The squad as the sidebar shows it: from every tab, where one formula takes one range of each table. */
export function squadAsRead(
  host: OpenHost,
  tables: readonly FoundTable[],
  today: string,
): { readonly rows: readonly (readonly (string | number)[])[]; readonly toCheck: number } {
  const { lines, toCheck } = host.run("squadView", [{ today }]) as SquadView;
  const given = tables.some(({ table }) => table === "Availability");
  const rows = lines.map((line) => [
    line.athlete,
    given ? line.mayDo : mayDoWords.notGiven,
    line.word,
    line.since.replace(/^since /, "") || "–",
    line.today || "–",
    line.rowsNotUsed,
    line.why,
  ]);
  return { rows, toCheck };
}
