import type { WeekLine, WeekView } from "../../actions/messages";
import type { State } from "../state";
import type { Dispatch } from "./sidebar";

/** What one athlete's week is drawn from. */
export type FieldsGiven = {
  readonly line: WeekLine;
  readonly week: Pick<WeekView, "stepKg" | "numbers">;
  readonly state: Pick<State, "changes" | "shown">;
  readonly dispatch: Dispatch;
};
