import { exerciseKey } from "../../coaching/record/exercise-key";
import type { TableView } from "../table-view";

/** Which lifts have a load somewhere in a table, and which rows have none. */
export class LoadsSeen {
  private readonly loaded = new Set<string>();
  private readonly blank: { readonly row: number; readonly exercise: string }[] = [];
  // Rows of one lift come in runs.
  private last = "";

  see(exercise: string): void {
    if (exercise !== this.last) this.loaded.add(exercise);
    this.last = exercise;
  }

  /** `row` counts from 0. */
  miss(row: number, exercise: string): void {
    this.blank.push({ row, exercise });
  }

  /**
   * Reports a blank load of a lift that has loads elsewhere in the table; hops and other exercises
   * without a bar have none to miss. The row stays, with its load not recorded.
   */
  report({ fields, log }: TableView): void {
    const loaded = new Set([...this.loaded].map(exerciseKey));
    for (const { row, exercise } of this.blank)
      if (loaded.has(exerciseKey(exercise)))
        log.add("load-blank", row, fields.load!.index, "", { exercise });
  }
}
