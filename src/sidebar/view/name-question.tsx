import { useState } from "preact/hooks";
import type { NameQuestion } from "../../actions/messages";
import { sidebarWords as words } from "../../words/sidebar";
import type { Dispatch } from "./sidebar";

/** A name that the Athletes table does not have, and whose it can be said to be: a near spelling's, else anybody's. */
export function UnknownName({
  one,
  athletes,
  today,
  dispatch,
}: {
  readonly one: NameQuestion;
  readonly athletes: readonly string[];
  readonly today: string;
  readonly dispatch: Dispatch;
}) {
  const answer = (athlete: string, same: boolean) =>
    dispatch({
      type: "asked",
      ask: { name: "answerName", message: { today, written: one.name, athlete, same } },
      busy: words.working,
    });
  const goTo = () =>
    dispatch({
      type: "asked",
      ask: { name: "goToCell", message: { tabId: one.tabId, cell: one.cell } },
      busy: words.working,
    });
  const [chosen, choose] = useState("");
  const isListed = athletes.length > 0;
  const mayBeAny = isListed && one.near.length === 0;
  return (
    <div class="problem">
      <p>
        <strong>{`${one.tab} ${one.cell}`}</strong>{" "}
        <span class="soft">{words.inRows(one.rows)}</span>
      </p>
      <p>
        <strong>{words.nameNotListed(one.name)}</strong>
      </p>
      <p>{one.toDo}</p>
      {mayBeAny && <Anybody name={one.name} athletes={athletes} chosen={chosen} choose={choose} />}
      <p class="buttons">
        <button type="button" class="btn" onClick={goTo}>
          {words.goTo(one.cell)}
        </button>
        {mayBeAny && (
          <button
            type="button"
            class="btn"
            disabled={chosen === ""}
            onClick={() => answer(chosen, true)}
          >
            {words.countAsChosen}
          </button>
        )}
        {one.near.map((athlete) => (
          <button key={athlete} type="button" class="btn" onClick={() => answer(athlete, true)}>
            {words.countAs(athlete)}
          </button>
        ))}
        {one.near.map((athlete) => (
          <button
            key={athlete}
            type="button"
            class="btn plain"
            onClick={() => answer(athlete, false)}
          >
            {words.somebodyElse(athlete)}
          </button>
        ))}
        {isListed && (
          <button type="button" class="btn plain" onClick={() => answer("", false)}>
            {words.notInSquad}
          </button>
        )}
      </p>
    </div>
  );
}

/** All athletes to choose from, none until the coach has; a list walked through by keys must not answer yet. */
function Anybody({
  name,
  athletes,
  chosen,
  choose,
}: {
  readonly name: string;
  readonly athletes: readonly string[];
  readonly chosen: string;
  readonly choose: (athlete: string) => void;
}) {
  return (
    <label class="field">
      <span>{words.whoIs(name)}</span>
      <select value={chosen} onChange={({ currentTarget }) => choose(currentTarget.value)}>
        <option value="">{words.noAnswerYet}</option>
        {athletes.map((athlete) => (
          <option key={athlete} value={athlete}>
            {athlete}
          </option>
        ))}
      </select>
    </label>
  );
}
