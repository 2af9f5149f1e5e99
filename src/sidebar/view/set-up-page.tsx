import { useState } from "preact/hooks";
import type { SetUpQuestion, SetUpTab } from "../../actions/messages";
import { seasonTabWords } from "../../words/season-tab";
import { sidebarWords as words } from "../../words/sidebar";
import type { State } from "../state";
import type { Dispatch } from "./sidebar";

/** What was found where, what has to be asked, and who can see it. */
export function SetUpPage({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  const { setUp, today } = state;
  if (!setUp) return null;
  const ask = (name: string, message: Readonly<Record<string, unknown>>) =>
    dispatch({ type: "asked", ask: { name, message: { today, ...message } }, busy: words.working });
  const [question] = setUp.questions;
  return (
    <>
      {question && (
        <section class="ask">
          <h2>{words.questions(setUp.questions.length)}</h2>
          <Question
            key={`${question.tabId}|${question.column}|${question.about}`}
            question={question}
            ask={ask}
          />
        </section>
      )}
      <section>
        <h2>{words.tablesFound}</h2>
        <ul class="list">
          {setUp.tabs.map((tab) => (
            <li key={tab.tabId}>
              <TabRow tab={tab} tables={setUp.tables} ask={ask} />
            </li>
          ))}
        </ul>
        {setUp.missing.length > 0 && <p class="soft">{words.missing(setUp.missing)}</p>}
        <p class="act">
          <button type="button" class="btn" onClick={() => dispatch({ type: "asked again" })}>
            {words.findAgain}
          </button>{" "}
          <button type="button" class="btn" onClick={() => ask("makeCleanTabs", {})}>
            {words.setUpTabs}
          </button>
        </p>
        <p class="soft small">{words.setUpTabsHelp}</p>
      </section>
      {setUp.answered.length + setUp.names.length > 0 && (
        <section>
          <h2>{words.answersKept}</h2>
          <ul class="list">
            {setUp.answered.map(({ tabId, tab, heading, column, said }) => (
              <li key={`${tabId}|${heading}|${column}`} class="answered">
                <span>{words.columnSaid(tab, heading, column, said)}</span>{" "}
                <button
                  type="button"
                  class="btn plain"
                  onClick={() => ask("forgetColumn", { tabId, heading, column })}
                >
                  {words.forget}
                </button>
              </li>
            ))}
            {setUp.names.map(({ spelling, athlete }) => (
              <li key={spelling} class="answered">
                <span>{words.sameName(spelling, athlete)}</span>{" "}
                <button
                  type="button"
                  class="btn plain"
                  onClick={() => ask("forgetName", { written: spelling })}
                >
                  {words.forget}
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{words.season}</h2>
        <p class="act">
          <button type="button" class="btn" onClick={() => ask("writeSeason", {})}>
            {seasonTabWords.button}
          </button>
        </p>
        <p class="soft small">{seasonTabWords.help}</p>
      </section>
      <section>
        <h2>{words.whoCanSee}</h2>
        <p>{setUp.whoSees}</p>
      </section>
    </>
  );
}

type Ask = (name: string, message: Readonly<Record<string, unknown>>) => void;

function TabRow({
  tab,
  tables,
  ask,
}: {
  readonly tab: SetUpTab;
  readonly tables: readonly string[];
  readonly ask: Ask;
}) {
  return (
    <label class="field tab-row">
      <span>{`${tab.tab}: ${tab.sure}${tab.rows > 0 ? `, ${tab.rows} rows` : ""}`}</span>
      <select
        aria-label={words.chooseTable(tab.tab)}
        value={tab.table ?? ""}
        onChange={(event) => {
          const table = (event.currentTarget as HTMLSelectElement).value;
          ask("answerTable", { tabId: tab.tabId, table: table === "" ? null : table });
        }}
      >
        <option value="">{words.noTable}</option>
        {tables.map((table) => (
          <option key={table} value={table}>
            {table}
          </option>
        ))}
      </select>
    </label>
  );
}

function Question({ question, ask }: { readonly question: SetUpQuestion; readonly ask: Ask }) {
  const { tab, tabId, column, heading, about, samples, guess, choices } = question;
  const [chosen, choose] = useState(guess ?? "");
  const asked = { meaning: words.whatIs, unit: words.inWhatUnit, "date order": words.whichOrder }[
    about
  ];
  const answer = () => {
    const part =
      about === "meaning"
        ? { field: chosen === "" ? null : chosen }
        : about === "unit"
          ? { unit: chosen }
          : { dateOrder: chosen };
    ask("answerColumn", { tabId, heading, column, ...part });
  };
  return (
    <fieldset>
      <legend>{asked(tab, heading)}</legend>
      <p class="soft">{words.holds(samples)}</p>
      {choices.map((choice) => (
        <label key={choice} class="choice">
          <input
            type="radio"
            name="answer"
            checked={chosen === choice}
            onChange={() => choose(choice)}
          />{" "}
          {choice}
        </label>
      ))}
      {about === "meaning" && (
        <label class="choice">
          <input type="radio" name="answer" checked={chosen === ""} onChange={() => choose("")} />{" "}
          {words.leaveAlone}
        </label>
      )}
      <p class="buttons">
        <button type="button" class="btn" onClick={answer}>
          {words.remember}
        </button>{" "}
        <span class="soft">{words.askedOnce}</span>
      </p>
    </fieldset>
  );
}
