import { isBlank } from "../../value/blank";
import type { Unfolded } from "../unfolded";
import type { AthleteRow } from "./athlete-rows";
import type { DateHeader } from "./date-header";

/** Marks an athlete's row as data and keeps what stands in the columns of notes, which is of its week. */
export function weekNotes(
  into: Unfolded,
  { noteColumns }: DateHeader,
  line: readonly unknown[],
  { row, athlete }: AthleteRow,
): void {
  into.mark(row, "data");
  for (const { column, monday } of noteColumns)
    if (!isBlank(line[column]))
      into.note(row, column, athlete, monday, "week", String(line[column]).trim());
}
