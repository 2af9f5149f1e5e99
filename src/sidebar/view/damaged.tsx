import { recallWords } from "../../words/remembered";
import type { State } from "../state";
import type { Dispatch } from "./sidebar";

/** What the view was read without: damaged as it is, it is kept until the coach says to forget it. */
export function Damaged({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  return (
    <>
      {(state[state.view]?.damaged ?? []).map(({ what, said }) => (
        <div key={what} class="says error" role="alert">
          <p>{said}</p>
          <button
            type="button"
            class="btn"
            onClick={() => dispatch({ type: "forgot damaged", what })}
          >
            {recallWords.forget}
          </button>
        </div>
      ))}
    </>
  );
}
