import type { Day } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { isDitto } from "../../value/ditto";
import type { Unfolded } from "../unfolded";
import type { DayColumn } from "./date-header";

/**
 * Columns under dates put together, those of one set, run or jump each: where a day's headings begin
 * anew ("kg", "m/s", "kg", "m/s"), another one begins.
 */
export class ColumnGroups {
  readonly groups: DayColumn[][] = [];
  private readonly open = new Map<Day, DayColumn[]>();

  add(column: DayColumn): void {
    const group = this.open.get(column.day);
    if (group !== undefined && group[0]!.field !== column.field) {
      group.push(column);
      return;
    }
    const started = [column];
    this.open.set(column.day, started);
    this.groups.push(started);
  }
}

/** A column under a date with what an athlete's row says there. */
export type FilledColumn = DayColumn & { readonly field: string; readonly cell: unknown };

/**
 * The columns of one group that an athlete's row fills. `before` keeps what stands in columns of the
 * same meaning to the left, which a ditto mark repeats; reports `nothing-to-repeat`.
 */
export function filledColumns(
  into: Unfolded,
  line: readonly unknown[],
  row: number,
  columns: readonly DayColumn[],
  before: Map<string, unknown>,
): FilledColumn[] {
  return columns.flatMap((column) => {
    const { field } = column;
    const written = line[column.column];
    if (field === null || isBlank(written)) return [];
    const cell = isDitto(written) ? before.get(field) : written;
    if (cell === undefined) into.log.addAtSource("nothing-to-repeat", row, column.column);
    else before.set(field, cell);
    return cell === undefined ? [] : [{ ...column, field, cell }];
  });
}
