import { cellAbove } from "../column/above";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";

/**
 * Gives a row with what its ditto marks and its blanks under merged cells repeat; the very same row
 * where nothing in it leans on others. Rows are asked for from the top down.
 */
export function wholeRows(
  view: TableView,
): (line: readonly unknown[], row: number) => readonly unknown[] {
  const columns = [...Object.values(view.fields), ...view.repColumns].map(({ index, carried }) => {
    const leans = carried ? (cell: unknown) => isBlank(cell) || isDitto(cell) : isDitto;
    return { index, leans, above: cellAbove(view, index, leans) };
  });
  return (line, row) => {
    let whole: unknown[] | null = null;
    for (const { index, leans, above } of columns)
      if (leans(line[index])) {
        whole ??= [...line];
        whole[index] = above(row);
      }
    return whole ?? line;
  };
}
