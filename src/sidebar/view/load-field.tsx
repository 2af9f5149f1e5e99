import type { WeekLine, WeekSession, WeekView } from "../../actions/messages";
import { changeOf } from "../../actions/messages/week-change";
import { printedNumbers } from "../../words/printed-numbers";
import { weekViewWords as words } from "../../words/week-view";
import type { State } from "../state";
import { notYetShown } from "./not-yet-shown";
import type { Dispatch } from "./sidebar";

/** The heaviest load that can be asked for, kg. */
const mostKg = 500;

/** The load of a session's turn, a plate step up or down; nothing where another exercise takes the lift's place. */
export function LoadField({
  line: { athlete },
  session: { turn, dayWords, loadKg: shownKg, instead },
  week: { stepKg, numbers },
  state,
  dispatch,
}: {
  readonly line: Pick<WeekLine, "athlete">;
  readonly session: WeekSession;
  readonly week: Pick<WeekView, "stepKg" | "numbers">;
  readonly state: Pick<State, "changes" | "shown">;
  readonly dispatch: Dispatch;
}) {
  if (instead !== "") return null;
  const asked = changeOf(state.changes, athlete, turn);
  const { loadKg = shownKg } = notYetShown(asked, changeOf(state.shown, athlete, turn));
  const change = (kg: number) =>
    dispatch({
      type: "changed",
      change: { athlete, ...(turn !== "" && { turn }), loadKg: Math.min(mostKg, Math.max(0, kg)) },
    });
  const { unit, mass } = printedNumbers(numbers);
  const ofTurn = (label: string) => (turn === "" ? label : `${label}, ${dayWords}`);
  return (
    <fieldset class="field">
      <legend>{words.load(unit)}</legend>
      <div class="stepper">
        <button
          type="button"
          aria-label={ofTurn(words.lighter)}
          onClick={() => change(loadKg - stepKg)}
        >
          −
        </button>
        <output>{mass(loadKg)}</output>
        <button
          type="button"
          aria-label={ofTurn(words.heavier)}
          // From what was asked for before, where no plates make it: so a gap is stepped over.
          onClick={() => change(Math.max(loadKg, asked.loadKg ?? 0) + stepKg)}
        >
          +
        </button>
      </div>
    </fieldset>
  );
}
