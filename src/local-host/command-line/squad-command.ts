import { squadColumns } from "../../words/squad-columns";
import type { OpenHost } from "../open-host";
import { isDateFormat, isoFromSerial } from "../spreadsheet-date";
import type { WorkbookData } from "../workbook-data";
import type { Asked } from "./arguments";
import { type FoundTable, foundTables } from "./found-tables";
import { needsALook } from "./needs-a-look";
import { openedWorkbook } from "./opened-workbook";
import { plainValue, shownShare, shownValue } from "./shown-value";
import { squadAsRead, squadAsReadColumns } from "./squad-as-read";
import { Refused, type Surroundings } from "./surroundings";
import { textTable } from "./text-table";

/** Columns that hold shares, and whether a plus is written. */
const shares = new Map([
  [5, true],
  [6, false],
  [7, false],
]);
const inOrder = ["Athletes", "Availability", "Sets", "Jumps", "Diary", "Races"];

/** Prints the squad table of a workbook. */
export async function squadCommand(asked: Asked, around: Surroundings): Promise<number> {
  const { host, workbook } = await openedWorkbook(asked.workbook, around);
  try {
    const asOf = asked.asOf ?? dayBesideToday(workbook) ?? around.today();
    const found = foundTables(host, workbook, asOf);
    const tables = found.filter(({ sure }) => sure);
    if (!tables.some(({ table }) => table === "Sets" || table === "Jumps")) {
      const [maybe] = found.filter(({ table }) => table === "Sets" || table === "Jumps");
      throw new Refused(
        maybe === undefined
          ? "There is no Sets table in this workbook. Name its tab Sets, with a header row."
          : `The tab “${maybe.tab}” may be the ${maybe.table} table. Open the workbook and say under Set up whether it is.`,
      );
    }
    const { columns, rows, toCheck } = oneRangeEach(tables)
      ? {
          columns: squadColumns,
          rows: await squadTable(host, tables, asOf),
          toCheck: found.length - tables.length,
        }
      : { columns: squadAsReadColumns, ...squadAsRead(host, tables, asOf) };
    if (asked.json) {
      const plain = rows.map((row) => row.map(plainValue));
      around.out(`${JSON.stringify({ asOf, columns, rows: plain }, null, 2)}\n`);
      return 0;
    }
    const shown = rows.map((row) =>
      row.map((value, column) =>
        columns === squadColumns && shares.has(column)
          ? shownShare(value, shares.get(column)!)
          : shownValue(value),
      ),
    );
    // The last column is sentences: they stand below, a line each.
    const notesAt = columns.length - 1;
    const table = shown.map((row) => row.slice(0, notesAt));
    around.out(`${workbook.name}, ${asOf}\n\n${textTable([columns.slice(0, notesAt), ...table])}`);
    const notes = shown.filter((row) => row[notesAt]).map((row) => `${row[0]}: ${row[notesAt]}\n`);
    if (notes.length > 0) around.out(`\n${notes.join("")}`);
    if (toCheck > 0) around.err(`${needsALook(toCheck)}: the command check lists them.\n`);
    return 0;
  } finally {
    host.dispose();
  }
}

/** A formula takes the athletes, and one range of each other table at most. */
function oneRangeEach(tables: readonly FoundTable[]): boolean {
  const count = (table: string) => tables.filter((one) => one.table === table).length;
  return (
    count("Athletes") === 1 && count("Sets") === 1 && inOrder.every((table) => count(table) < 2)
  );
}

async function squadTable(
  host: OpenHost,
  tables: readonly FoundTable[],
  asOf: string,
): Promise<readonly (readonly unknown[])[]> {
  const rangeOf = (table: string) => tables.find((one) => one.table === table)?.range ?? '""';
  const ranges = inOrder.map(rangeOf).join(", ");
  const gym = `${rangeOf("Plates")}, ${rangeOf("Rules")}`;
  const answer = await host.evaluate(`=SQUAD_TABLE(${ranges}, "${asOf}", ${gym})`);
  if (!answer.ok) throw new Refused(answer.sentence);
  return answer.values;
}

/** The day in the cell beside the word “Today”, when a tab has one. */
export function dayBesideToday({ tabs }: WorkbookData): string | null {
  for (const { cells } of tabs) {
    for (const line of cells.slice(0, 20)) {
      const at = line.findIndex((cell) => cell?.value === "Today");
      const beside = at < 0 ? null : line[at + 1];
      if (typeof beside?.value === "number" && isDateFormat(beside.format ?? "")) {
        return isoFromSerial(Math.floor(beside.value));
      }
    }
  }
  return null;
}
