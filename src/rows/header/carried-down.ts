import type { TableView } from "../table-view";
import type { ColumnDecision } from "./decide-columns";

/** Decisions, with those columns marked whose blank cells repeat what stands above. */
export function carriedDown(
  decisions: readonly ColumnDecision[],
  view: TableView | null,
): ColumnDecision[] {
  return decisions.map((decision) =>
    view?.fields[decision.field ?? ""]?.carried === true
      ? { ...decision, carried: true }
      : decision,
  );
}
