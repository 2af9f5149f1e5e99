import type { SquadLine } from "../../actions/messages";
import { sidebarWords as words } from "../../words/sidebar";
import type { State } from "../state";
import { Cautions } from "./cautions";
import type { Dispatch } from "./sidebar";
import { Word } from "./words";

/** The squad at a glance: those who moved first, a reason under each name. */
export function SquadPage({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  const { squad } = state;
  if (!squad) return null;
  if (squad.lines.length === 0)
    return <p class="empty">{`${words.squadEmpty} ${words.seeTabs}`}</p>;
  return (
    <>
      <p class="lead">
        {squad.summary} <span class="soft">{squad.asOfWords}.</span>
      </p>
      <ul class="list">
        {squad.lines.map((line) => (
          <li key={line.athlete}>
            <SquadRow line={line} dispatch={dispatch} />
          </li>
        ))}
      </ul>
      <p class="act">
        <button
          type="button"
          class="btn"
          onClick={() =>
            dispatch({
              type: "asked",
              ask: { name: "highlightSquad", message: {} },
              busy: words.working,
            })
          }
        >
          {words.highlight}
        </button>
      </p>
      <Cautions lines={squad.cautions} />
    </>
  );
}

function SquadRow({ line, dispatch }: { readonly line: SquadLine; readonly dispatch: Dispatch }) {
  return (
    <button
      type="button"
      class="row inset"
      onClick={() => dispatch({ type: "opened athlete", athlete: line.athlete })}
    >
      <span class="name">{line.athlete}</span>
      <span class="soft end">{line.mayDo === "full" ? line.event : line.mayDo}</span>
      <span class="second">
        <Word word={line.word} dress={line.dress} />
        {line.since !== "" && <span class="soft"> {line.since}</span>}
      </span>
      {line.todayDress !== "plain" && (
        <span class="second">
          <Word word={line.today} dress={line.todayDress} />
          {line.todayWhy !== "" && (
            <span class="soft">
              <span class="off">,</span> {line.todayWhy}
            </span>
          )}
        </span>
      )}
    </button>
  );
}
