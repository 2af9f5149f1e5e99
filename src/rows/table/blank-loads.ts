import { exerciseKey } from "../../coaching/record/exercise-key";
import type { TableView } from "../table-view";

/**
 * Reports a blank load of a lift that has loads elsewhere in the table; hops and other exercises
 * without a bar have none to miss. The row stays, with its load not recorded.
 */
export function reportBlankLoads(
  view: TableView,
  blank: readonly { readonly row: number; readonly exercise: string }[],
  loadedLifts: ReadonlySet<string>,
): void {
  const loaded = new Set([...loadedLifts].map(exerciseKey));
  const column = view.fields.load;
  for (const { row, exercise } of blank)
    if (loaded.has(exerciseKey(exercise)))
      view.log.add("load-blank", row, column?.index ?? -1, "", { exercise });
}
