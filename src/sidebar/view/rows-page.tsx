import type { RowCheckView, RowProblem } from "../../actions/messages";
import { withMark } from "../../words/printed-numbers";
import { leftAloneWords } from "../../words/row-check";
import { kindCounts, kindWords } from "../../words/row-kinds";
import { sidebarWords as words } from "../../words/sidebar";
import { likeProblems } from "../like-problems";
import type { State } from "../state";
import { UnknownName } from "./name-question";
import type { Dispatch } from "./sidebar";

const shownAtFirst = 100;

/** Every cell that could not be used: where, what, why it matters, what to do. */
export function RowsPage({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  const { rows, today } = state;
  if (!rows) return null;
  const kinds = kindCounts(rows);
  const listed = likeProblems(rows.problems);
  const of = { mark: rows.mark, today, dispatch };
  const none = rows.problems.length === 0 && rows.names.length === 0;
  return (
    <>
      <p class="lead">
        <strong>{rows.summary}.</strong> {none ? nothingListed(rows) : words.cellsStay}
      </p>
      {kinds.length > 0 && (
        <p class="soft small">{kinds.map(({ kind, count }) => `${kind}: ${count}`).join(" · ")}</p>
      )}
      <ul class="list">
        {rows.names.map((one) => (
          <li key={one.name}>
            <UnknownName one={one} athletes={rows.athletes} today={today} dispatch={dispatch} />
          </li>
        ))}
        {listed.slice(0, shownAtFirst).map(({ first, more, column, headingInDoubt }) => (
          <li key={keyOf(first)}>
            <Problem problem={first} {...of} />
            {more.length > 0 && (
              <div class="problem">
                {headingInDoubt && <p>{words.headingRight(column)}</p>}
                <details>
                  <summary>{words.moreLike(more.length, column)}</summary>
                  <ul class="list">
                    {more.slice(0, shownAtFirst).map((problem) => (
                      <li key={keyOf(problem)}>
                        <Problem problem={problem} {...of} />
                      </li>
                    ))}
                  </ul>
                  {more.length > shownAtFirst && (
                    <p class="soft">{words.onlyFirst(shownAtFirst)}</p>
                  )}
                </details>
              </div>
            )}
          </li>
        ))}
      </ul>
      {listed.length > shownAtFirst && <p class="soft">{words.onlyFirst(shownAtFirst)}</p>}
      {rows.waiting !== "" && <p class="soft small">{rows.waiting}</p>}
      {rows.leftAlone.length > 0 && <p class="soft small">{leftAloneWords(rows.leftAlone)}</p>}
      <p class="act">
        <button type="button" class="btn main" onClick={() => dispatch({ type: "asked again" })}>
          {words.checkAgain}
        </button>
      </p>
    </>
  );
}

/** Where no row was read nothing is mended by reading on: the tabs are looked at instead. */
const nothingListed = ({ noRows }: RowCheckView) => (noRows ? words.seeTabs : words.nothingToMend);

const keyOf = ({ tabId, cell, kind }: RowProblem) => `${tabId}${cell}${kind}`;

function Problem({
  problem,
  mark,
  today,
  dispatch,
}: {
  readonly problem: RowProblem;
  readonly mark: RowCheckView["mark"];
  readonly today: string;
  readonly dispatch: Dispatch;
}) {
  const { tab, tabId, cell, found, toDo, why, mend, right } = problem;
  const ask = (name: string, message: Readonly<Record<string, unknown>>) =>
    dispatch({ type: "asked", ask: { name, message }, busy: words.working });
  return (
    <div class="problem">
      <p>
        <strong>{`${tab} ${cell}`}</strong> <span class="soft">{kindWords(problem.kind)}</span>
      </p>
      <p>
        <strong>{found}</strong>
      </p>
      <p>{withMark(toDo, mark)}</p>
      <p class="soft small">{withMark(why, mark)}</p>
      <p class="buttons">
        <button type="button" class="btn" onClick={() => ask("goToCell", { tabId, cell })}>
          {words.goTo(cell)}
        </button>
        {mend !== null && (
          <button
            type="button"
            class="btn"
            onClick={() => ask("mendCell", { today, tabId, cell, found, mend })}
          >
            {words.mend(withMark(mend, mark))}
          </button>
        )}
        {right !== null && (
          <button type="button" class="btn" onClick={() => ask("answerSet", { today, set: right })}>
            {words.rightSo}
          </button>
        )}
      </p>
    </div>
  );
}
