import type { TableView } from "../table-view";
import { isDitto } from "../value/ditto";

/**
 * What a ditto mark repeats: the nearest cell above that is no mark itself. Remembers the last
 * answer, so a column of a million marks is still walked once.
 */
export function cellAbove(
  view: TableView,
  index: number,
  repeats: (cell: unknown) => boolean = isDitto,
): (row: number) => unknown {
  let lastRow = -1;
  let lastCell: unknown = "";
  return (row) => {
    let at = row - 1;
    // Nothing above the first row is looked at, in whatever order rows are asked for.
    while (at >= view.first && at !== lastRow && repeats(view.cells[at]![index])) at--;
    lastCell = at === lastRow ? lastCell : at < view.first ? "" : view.cells[at]![index];
    lastRow = row;
    return lastCell;
  };
}
