import type { SetUpAnswer, SetUpView } from "../../actions/messages";
import { answerLabel } from "../../words/questions";
import { sidebarWords as words } from "../../words/sidebar";
import { type AskServer, remember } from "./set-up-question";

/** What the coach has said; each can be changed where there is a choice, and forgotten. */
export function Answers({
  setUp: { answered, names },
  ask,
}: {
  readonly setUp: Pick<SetUpView, "answered" | "names">;
  readonly ask: AskServer;
}) {
  if (answered.length + names.length === 0) return null;
  return (
    <section>
      <h2>{words.answersKept}</h2>
      <ul class="list">
        {answered.map((answer) => (
          <li key={keyOf(answer)} class="answered">
            <Said
              label={answerLabel(answer)}
              forget={() => ask(...forgetting(answer))}
              {...changing(answer, ask)}
            />
          </li>
        ))}
        {names.map(({ spelling, athlete }) => (
          <li key={spelling} class="answered">
            <Said
              label={words.sameName(spelling, athlete)}
              forget={() => ask("forgetName", { written: spelling })}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Said({
  label,
  forget,
  choices = [],
  chosen = "",
  change,
}: {
  readonly label: string;
  readonly forget: () => void;
  readonly choices?: SetUpAnswer["choices"];
  readonly chosen?: string;
  readonly change?: (answer: string) => void;
}) {
  return (
    <>
      <span>{label}</span>{" "}
      {change && choices.length === 0 && (
        <input
          type="text"
          aria-label={words.changeOf(label)}
          value={chosen}
          maxLength={80}
          onChange={(event) => change((event.currentTarget as HTMLInputElement).value)}
        />
      )}
      {change && choices.length > 1 && (
        <select
          aria-label={words.changeOf(label)}
          value={chosen}
          onChange={(event) => change((event.currentTarget as HTMLSelectElement).value)}
        >
          {choices.map(({ answer, words: text }) => (
            <option key={answer} value={answer}>
              {text}
            </option>
          ))}
        </select>
      )}{" "}
      <button type="button" class="btn plain" aria-label={words.forgetOf(label)} onClick={forget}>
        {words.forget}
      </button>
    </>
  );
}

function keyOf(answer: SetUpAnswer): string {
  const own = "written" in answer ? answer.written : `${answer.tag}|${answer.column}`;
  return `${answer.tabId}|${answer.about}|${own}`;
}

/** A column that is no longer there can only be forgotten. */
function changing(answer: SetUpAnswer, ask: AskServer) {
  const { said, choices } = answer;
  if ("column" in answer && answer.column === 0) return {};
  const leave = { answer: "", words: words.leaveAlone };
  const meaning = answer.about === "meaning";
  const all = meaning ? [...choices, leave] : choices;
  return {
    choices: all,
    // A lift, a name and a mass were typed: the words are the answer.
    chosen:
      all.length === 0
        ? said
        : (all.find((one) => one.words === said || one.answer === said)?.answer ?? ""),
    change: (chosen: string) => remember(answer, chosen, ask),
  };
}

function forgetting(answer: SetUpAnswer): Parameters<AskServer> {
  const { tabId, about } = answer;
  return "written" in answer
    ? ["forgetTab", { tabId, about, written: answer.written }]
    : ["forgetColumn", { tabId, about, column: answer.column, tag: answer.tag }];
}
