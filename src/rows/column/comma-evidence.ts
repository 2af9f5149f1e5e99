import type { TableView } from "../table-view";

const known = new WeakMap<TableView, Map<number, "decimal" | "thousands" | null>>();

/**
 * What a comma or point before three digits means in a column, by its other cells: "12,5" makes commas
 * decimal, "1,250.5" makes them group thousands. Null when no cell says, or when they disagree.
 */
export function commaMeans(view: TableView, index: number): "decimal" | "thousands" | null {
  const columns = known.get(view) ?? new Map<number, "decimal" | "thousands" | null>();
  known.set(view, columns);
  const before = columns.get(index);
  if (before !== undefined) return before;
  let decimal = false;
  let thousands = false;
  for (let row = view.first; row < view.end; row++) {
    const cell = view.cells[row]![index];
    if (typeof cell !== "string") continue;
    if (/^\s*\d+,(\d{1,2}|\d{4,})(\D|$)/.test(cell)) decimal = true;
    if (/^\s*\d{1,3}(,\d{3})+\.\d/.test(cell) || /^\s*\d{1,3}(,\d{3}){2,}/.test(cell))
      thousands = true;
  }
  const means = decimal === thousands ? null : decimal ? "decimal" : "thousands";
  columns.set(index, means);
  return means;
}
