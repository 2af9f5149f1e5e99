import { sidebarWords as words } from "../../words/sidebar";
import type { Event } from "../event";
import type { State, ViewName } from "../state";
import { AthletePage } from "./athlete-page";
import { Damaged } from "./damaged";
import { RowsPage } from "./rows-page";
import { SetUpPage } from "./set-up-page";
import { SquadPage } from "./squad-page";
import { WeekPage } from "./week-page";

export type Dispatch = (event: Event) => void;

const order: readonly ViewName[] = ["week", "squad", "rows", "setUp"];

/** The whole sidebar from its state. */
export function Sidebar({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  return (
    <>
      <div class="head">
        <Views state={state} dispatch={dispatch} />
        <div class="told">
          <div class="news" aria-live="polite">
            {state.busy !== null && (
              <p class="says">
                <label>
                  {state.busy} …<progress />
                </label>
              </p>
            )}
            {state.said !== null && state.busy === null && (
              <div class="says done">
                <p>{state.said}</p>
                {state.takeBack?.said === state.said && (
                  <button
                    type="button"
                    class="btn"
                    onClick={() => dispatch({ type: "took answer back" })}
                  >
                    {words.takeBack}
                  </button>
                )}
                {state.said === words.undoneSince && (
                  <button
                    type="button"
                    class="btn"
                    onClick={() => dispatch({ type: "asked again" })}
                  >
                    {words.readAgain}
                  </button>
                )}
              </div>
            )}
          </div>
          {state.error !== null && (
            <div class="says error" role="alert">
              <p>{state.error}</p>
              <button type="button" class="btn" onClick={() => dispatch({ type: "asked again" })}>
                {words.readAgain}
              </button>
            </div>
          )}
        </div>
        <Damaged state={state} dispatch={dispatch} />
      </div>
      <main aria-busy={state.busy !== null}>
        {state.athlete === null && (
          <h1 class="off" tabIndex={-1}>
            {words.views[state.view]}
          </h1>
        )}
        <Page state={state} dispatch={dispatch} />
      </main>
    </>
  );
}

function Views({ state, dispatch }: { readonly state: State; readonly dispatch: Dispatch }) {
  const toCheck = state.toCheck ?? 0;
  return (
    <nav class="views" aria-label={words.viewsName}>
      {order.map((view) => (
        <button
          key={view}
          type="button"
          aria-current={state.view === view ? "page" : undefined}
          onClick={() => dispatch({ type: "chose view", view })}
        >
          {words.views[view]}
          {view === "rows" && toCheck > 0 && (
            <>
              <span class="count" aria-hidden="true">
                {toCheck}
              </span>
              <span class="off">{`, ${words.toCheck(toCheck)}`}</span>
            </>
          )}
        </button>
      ))}
    </nav>
  );
}

function Page({ state, dispatch }: { readonly state: State; readonly dispatch: Dispatch }) {
  if (state.athlete !== null) return <AthletePage state={state} dispatch={dispatch} />;
  switch (state.view) {
    case "week":
      return <WeekPage state={state} dispatch={dispatch} />;
    case "squad":
      return <SquadPage state={state} dispatch={dispatch} />;
    case "rows":
      return <RowsPage state={state} dispatch={dispatch} />;
    case "setUp":
      return <SetUpPage state={state} dispatch={dispatch} />;
  }
}
