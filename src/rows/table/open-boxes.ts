import type { Day } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import { sampleColumn } from "../header/value-fit";
import type { Somebody } from "../issue-log";
import type { TableView } from "../table-view";
import { holdsNothing } from "../value/no-value";
import { yesNo } from "../value/yes-no";

const isTicked = (cell: unknown) => yesNo(cell) === true;

type OfDay = Required<Somebody>;

/** Whether a column "Done" is in use: a box of it is ticked. */
export const anyTicked = ({ cells, first, end, fields: { done } }: TableView): boolean =>
  done !== undefined && sampleColumn(cells, first, end, done.index).some(isTicked);

/**
 * The boxes of a plan's column "Done": a row of which the box is not ticked, in a column in which others are, and
 * no speed stands beside it, is a set that was only planned.
 */
export class OpenBoxes {
  /** Some are ticked: what is not was not done. */
  private readonly isUsed: boolean;
  private readonly lastDone = new Map<string, Day>();
  private readonly open: (OfDay & { readonly row: number })[] = [];

  constructor(private readonly view: TableView) {
    this.isUsed = anyTicked(view);
  }

  /** Whether a row, counted from 0, is only planned. */
  isPlan(line: readonly unknown[], row: number, { athlete, day }: OfDay): boolean {
    if (!this.isUsed) return false;
    const { done, speed } = this.view.fields;
    const speeds = [...(speed ? [speed] : []), ...this.view.repColumns];
    const isDone =
      isTicked(line[done!.index]) || speeds.some(({ index }) => !holdsNothing(line[index]));
    if (isDone) {
      const key = nameKey(athlete);
      this.lastDone.set(key, Math.max(day, this.lastDone.get(key) ?? day));
    } else this.open.push({ row, athlete, day });
    return !isDone;
  }

  /**
   * Tells once for each athlete of rows up to today (where that is not known, to the table's last day done)
   * after the last one done: missed they may be, or done and not ticked. Rows of days to come are a plan.
   */
  report(): void {
    const { fields, cells, log, today } = this.view;
    if (this.open.length === 0) return;
    const upTo = today?.() ?? Math.max(...this.lastDone.values());
    const told = new Set<string>();
    for (const { row, athlete, day } of this.open) {
      const key = nameKey(athlete);
      const isPast = day > (this.lastDone.get(key) ?? Number.NEGATIVE_INFINITY) && day <= upTo;
      if (!isPast || told.has(key)) continue;
      told.add(key);
      const column = fields.done!.index;
      log.add("boxes-open", row, column, cells[row]![column], { athlete });
    }
  }
}
