import { diaryTable } from "./diary-rows";
import { jumpTable } from "./jump-rows";
import { raceTable } from "./race-rows";
import { rowsNotUsedTab } from "./rows-not-used-tab";
import { runTable } from "./run-rows";
import { setTable } from "./set-rows";
import { athleteTable, availabilityTable, plateTable, ruleTable } from "./settled-tables";
import { squadTab } from "./squad-tab";
import type { SampleCell, SampleTable } from "./table";

/** The sample workbook: the invented club's season up to Sunday 28 June 2026, one table a tab. */
export function sampleSquad(): readonly SampleTable[] {
  return [
    squadTab(),
    athleteTable(),
    availabilityTable(),
    setTable(),
    jumpTable(),
    diaryTable(),
    runTable(),
    raceTable(),
    plateTable(),
    ruleTable(),
    rowsNotUsedTab(),
  ];
}

/** CSV text of a table (RFC 4180, lines ended by a line feed). */
export function csvOf({ rows }: SampleTable): string {
  return rows.map((row) => `${row.map(field).join(",")}\n`).join("");
}

function field(cell: SampleCell): string {
  const text = cell === null ? "" : String(cell);
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
