import type { FieldsChanged, WeekLine, WeekSession } from "../../actions/messages";
import { changeOf } from "../../actions/messages/week-change";
import type { State } from "../state";
import { notYetShown } from "./not-yet-shown";
import type { Dispatch } from "./sidebar";

/** What a field of one session's turn is drawn from. */
export type OfTurn = {
  readonly line: Pick<WeekLine, "athlete" | "blocks">;
  readonly session: WeekSession;
  readonly state: Pick<State, "changes" | "shown">;
  readonly dispatch: Dispatch;
};

/** The fields of a session's turn: what was asked, what the script has not shown yet, how one is changed and named. */
export function turnFields({ line: { athlete }, session: { turn, dayWords }, ...given }: OfTurn) {
  const { state, dispatch } = given;
  const asked = changeOf(state.changes, athlete, turn);
  return {
    asked,
    wished: notYetShown(asked, changeOf(state.shown, athlete, turn)),
    change: (part: FieldsChanged) =>
      dispatch({ type: "changed", change: { athlete, ...(turn !== "" && { turn }), ...part } }),
    /** Fields of another turn are told apart by its day. */
    named: (label: string) => (turn === "" ? label : `${label}, ${dayWords}`),
  };
}
