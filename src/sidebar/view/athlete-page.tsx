import { useEffect, useRef } from "preact/hooks";
import { LineChart } from "../../charts/line-chart";
import { SeasonChart } from "../../charts/season-chart";
import { SetsChart } from "../../charts/sets-chart";
import { sidebarWords as words } from "../../words/sidebar";
import type { State } from "../state";
import { DiarySection } from "./diary-section";
import type { Dispatch } from "./sidebar";
import { WeekFields } from "./week-fields";
import { Word } from "./words";

/** One athlete: the word and why, the pictures, and in the week's view the fields of the proposal. */
export function AthletePage({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  const heading = useRef<HTMLHeadingElement>(null);
  // Opening a page moves the reader's place to its name.
  useEffect(() => heading.current?.focus(), []);
  const view = state.athleteView;
  const line = state.week?.lines.find(({ athlete }) => athlete === state.athlete);
  return (
    <>
      <p class="act">
        <button
          type="button"
          class="btn plain"
          onClick={() => dispatch({ type: "closed athlete" })}
        >
          {`‹ ${words.allAthletes}`}
        </button>
      </p>
      <h1 ref={heading} tabIndex={-1}>
        {state.athlete}
      </h1>
      {state.view === "week" && state.week && line && (
        <WeekFields line={line} week={state.week} state={state} dispatch={dispatch} />
      )}
      {view && (
        <>
          <section>
            <p>
              <Word word={view.line.word} dress={view.line.dress} /> {view.line.since}
            </p>
            <p>{view.line.why}</p>
            {view.line.rowsNotUsed > 0 && (
              <p class="soft">{words.rowsNotUsed(view.line.rowsNotUsed)}</p>
            )}
          </section>
          {view.season && view.season.series.length > 0 && (
            <section>
              <h2>{words.season}</h2>
              <SeasonChart {...view.season} />
            </section>
          )}
          {view.line.today !== "" && (
            <section>
              <h2>{words.lastSession}</h2>
              <p>
                <Word word={view.line.today} dress={view.line.todayDress} />
                {view.line.todayWhy !== "" && (
                  <>
                    <span class="off">,</span> {view.line.todayWhy}
                  </>
                )}
              </p>
            </section>
          )}
          {view.sets && (
            <section>
              <h2>{words.setToSet}</h2>
              <SetsChart {...view.sets} />
              <p class="soft">{view.sets.inWords}</p>
            </section>
          )}
          {view.loadSpeed && (
            <section>
              <h2>{words.loadSpeed}</h2>
              <LineChart {...view.loadSpeed} numbers={view.numbers} />
              <p class="soft">{view.loadSpeed.inWords}</p>
            </section>
          )}
        </>
      )}
      {state.diary && <DiarySection diary={state.diary} today={state.today} dispatch={dispatch} />}
    </>
  );
}
