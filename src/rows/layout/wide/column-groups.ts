import type { Day } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { isDitto } from "../../value/ditto";
import { foundText } from "../../value/found-text";
import { saysNoValue } from "../../value/no-value";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
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
 * The columns of one group that an athlete's row fills, one for each day and meaning. `before` keeps
 * what stands in columns of the same meaning to the left, which a ditto mark repeats. Of two that
 * differ neither counts, as no heading says which; reports `nothing-to-repeat`, `speeds-twice` and
 * `meaning-twice`.
 */
export function filledColumns(
  into: Unfolded,
  line: readonly unknown[],
  row: number,
  columns: readonly DayColumn[],
  before: Map<string, unknown>,
): FilledColumn[] {
  const filled = new Map<string, FilledColumn>();
  for (const column of columns) {
    const { field, day, unit } = column;
    const written = line[column.column];
    if (field === null || isBlank(written)) continue;
    const cell = isDitto(written) ? before.get(field) : written;
    if (cell === undefined) {
      into.log.addAtSource("nothing-to-repeat", row, column.column);
      continue;
    }
    before.set(field, cell);
    const key = `${day}|${field}`;
    const first = filled.get(key);
    if (first === undefined || saysNoValue(String(first.cell)))
      filled.set(key, { ...column, field, cell });
    else if (
      !saysNoValue(String(cell)) &&
      foundText(withUnit(first.cell, first.unit)) !== foundText(withUnit(cell, unit))
    ) {
      const code = field === "speed" ? "speeds-twice" : "meaning-twice";
      into.log.addAtSource(code, row, column.column, { other: foundText(line[first.column]) });
      filled.set(key, { ...first, cell: "" });
    }
  }
  return [...filled.values()];
}
