import { weekViewWords as words } from "../../words/week-view";
import type { Dispatch } from "./sidebar";

/** Writes again what the coach has deleted in the tab; nothing where nothing was. */
export function DeletedRows({
  rows,
  athletes,
  dispatch,
}: {
  readonly rows: number;
  /** Whose rows; null for the whole squad's. */
  readonly athletes: readonly string[] | null;
  readonly dispatch: Dispatch;
}) {
  if (rows === 0) return null;
  return (
    <button
      type="button"
      class="btn"
      onClick={() => dispatch({ type: "wrote", athletes, again: true })}
    >
      {words.writeDeleted(rows)}
    </button>
  );
}
