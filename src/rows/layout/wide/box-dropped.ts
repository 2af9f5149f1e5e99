import type { Column } from "../../header/column";
import { sampleColumn } from "../../header/value-fit";
import type { TableView } from "../../table-view";

/** "Box (cm)" beside contact times is what was dropped from, where it holds no stacks of plates. */
export function withBoxDropped(view: TableView): TableView {
  const { stack, ...fields } = view.fields as Readonly<Record<string, Column>>;
  if (stack === undefined || fields.contact === undefined || fields.drop !== undefined) return view;
  const heights = sampleColumn(view.cells, view.first, view.end, stack.index);
  return heights.every((cell) => typeof cell === "number")
    ? { ...view, fields: { ...fields, drop: stack } }
    : view;
}
