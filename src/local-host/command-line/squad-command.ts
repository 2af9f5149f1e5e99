import { squadColumns } from "../../words/squad-columns";
import { isDateFormat, isoFromSerial } from "../spreadsheet-date";
import type { WorkbookData } from "../workbook-data";
import type { Asked } from "./arguments";
import { foundTables } from "./found-tables";
import { openedWorkbook } from "./opened-workbook";
import { plainValue, shownShare, shownValue } from "./shown-value";
import { Refused, type Surroundings } from "./surroundings";
import { textTable } from "./text-table";

/** Columns that hold shares, and whether a plus is written. */
const shares = new Map([
  [5, true],
  [6, false],
  [7, false],
]);
const inOrder = ["Athletes", "Availability", "Sets", "Jumps", "Diary", "Races"];
const notesAt = squadColumns.indexOf("Notes");

/** Prints the squad table of a workbook. */
export async function squadCommand(asked: Asked, around: Surroundings): Promise<number> {
  const { host, workbook } = await openedWorkbook(asked.workbook, around);
  try {
    const asOf = asked.asOf ?? dayBesideToday(workbook) ?? around.today();
    const tables = foundTables(host, workbook, asOf);
    const rangeOf = (table: string) => tables.find((one) => one.table === table)?.range ?? '""';
    for (const needed of ["Athletes", "Sets"]) {
      if (rangeOf(needed) !== '""') continue;
      throw new Refused(
        `There is no ${needed} table in this workbook. Name its tab ${needed}, with a header row.`,
      );
    }
    const ranges = inOrder.map(rangeOf).join(", ");
    const gym = `${rangeOf("Plates")}, ${rangeOf("Rules")}`;
    const answer = await host.evaluate(`=SQUAD_TABLE(${ranges}, "${asOf}", ${gym})`);
    if (!answer.ok) throw new Refused(answer.sentence);
    const rows = answer.values.map((row) => row.map(plainValue));
    if (asked.json) {
      around.out(`${JSON.stringify({ asOf, columns: squadColumns, rows }, null, 2)}\n`);
      return 0;
    }
    const shown = answer.values.map((row) =>
      row.map((value, column) =>
        shares.has(column) ? shownShare(value, shares.get(column)!) : shownValue(value),
      ),
    );
    const table = shown.map((row) => row.slice(0, notesAt));
    around.out(
      `${workbook.name}, ${asOf}\n\n${textTable([squadColumns.slice(0, notesAt), ...table])}`,
    );
    const notes = shown.filter((row) => row[notesAt]).map((row) => `${row[0]}: ${row[notesAt]}\n`);
    if (notes.length > 0) around.out(`\n${notes.join("")}`);
    return 0;
  } finally {
    host.dispose();
  }
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
