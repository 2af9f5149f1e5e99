import type { SetUpTab } from "../../actions/messages";
import { seasonTabWords } from "../../words/season-tab";
import { sidebarWords as words } from "../../words/sidebar";
import type { State } from "../state";
import { Answers } from "./set-up-answers";
import { type AskServer, Question } from "./set-up-question";
import { Rules } from "./set-up-rules";
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
            key={`${question.tabId}|${question.about}|${"column" in question ? question.column : question.written}`}
            question={question}
            ask={ask}
          />
        </section>
      )}
      <section>
        <h2>{words.tablesFound}</h2>
        <ul class="list">
          {setUp.tabs.map((tab) => (
            <li
              key={`${tab.tabId}|${tab.table}`}
              class={tab.found === "said" ? "answered" : undefined}
            >
              <TabRow tab={tab} tables={setUp.tables} ask={ask} />
              {tab.found === "unsure" && tab.table !== null && alone(setUp.tabs, tab) && (
                <button
                  type="button"
                  class="btn"
                  onClick={() => ask("answerTable", { tabId: tab.tabId, table: tab.table })}
                >
                  {words.confirmTable(tab.tab, tab.table)}
                </button>
              )}
              {tab.found === "said" && (
                <button
                  type="button"
                  class="btn plain"
                  aria-label={words.forgetOf(`${tab.tab}, ${tab.table ?? words.noTable}`)}
                  onClick={() => ask("forgetTable", { tabId: tab.tabId })}
                >
                  {words.forget}
                </button>
              )}
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
      <Answers setUp={setUp} ask={ask} />
      <section>
        <h2>{words.season}</h2>
        <p class="act">
          <button type="button" class="btn" onClick={() => ask("writeSeason", {})}>
            {seasonTabWords.button}
          </button>
        </p>
        <p class="soft small">{seasonTabWords.help}</p>
      </section>
      <Rules rules={setUp.rules} mark={setUp.mark} />
      <section>
        <h2>{words.whoCanSee}</h2>
        <p>{words.whoSees}</p>
      </section>
    </>
  );
}

/** An answer is of the whole tab: it is asked for where the tab is one table. */
const alone = (tabs: readonly SetUpTab[], { tabId }: SetUpTab) =>
  tabs.filter((one) => one.tabId === tabId).length === 1;

function TabRow({
  tab,
  tables,
  ask,
}: {
  readonly tab: SetUpTab;
  readonly tables: readonly string[];
  readonly ask: AskServer;
}) {
  const rows = tab.rows > 0 ? `, ${words.manyRows(tab.rows)}` : "";
  const found = `${tab.tab}${rows}: ${words.found[tab.found]}`;
  return (
    <label class="field tab-row">
      <span>{found}</span>
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
