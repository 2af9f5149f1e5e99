import type { SetUpAnswer, SetUpView } from "../../actions/messages";
import { answerLabel } from "../../words/questions";
import { sidebarWords as words } from "../../words/sidebar";
import type { Ask } from "../state";
import { answerAsk, chosenOf, forgetAsk } from "../take-back";
import type { AskServer } from "./set-up-question";

/** What the coach has said; each can be changed where there is a choice, and forgotten. */
export function Answers({
  setUp: { answered, names, rightSets },
  ask,
}: {
  readonly setUp: Pick<SetUpView, "answered" | "names" | "rightSets">;
  readonly ask: AskServer;
}) {
  if (answered.length + names.length + rightSets.length === 0) return null;
  const send = ({ name, message }: Ask) => ask(name, message);
  return (
    <section>
      <h2>{words.answersKept}</h2>
      <ul class="list">
        {answered.map((answer) => (
          <li key={keyOf(answer)} class="answered">
            <Said
              label={answerLabel(answer)}
              forget={() => send(forgetAsk(answer))}
              {...changing(answer, send)}
            />
          </li>
        ))}
        {names.map(({ spelling, athlete, same }) => (
          <li key={`${spelling}|${athlete}`} class="answered">
            <Said
              label={(same ? words.sameName : words.otherName)(spelling, athlete)}
              forget={() => ask("forgetName", { written: spelling, ...(same ? {} : { athlete }) })}
            />
          </li>
        ))}
        {rightSets.map((set) => (
          <li key={set} class="answered">
            <Said label={words.rightSet(set)} forget={() => ask("forgetSet", { set })} />
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
function changing(answer: SetUpAnswer, send: (ask: Ask) => void) {
  const { choices, about } = answer;
  if ("column" in answer && answer.column === 0) return {};
  const leave = { answer: "", words: words.leaveAlone };
  return {
    choices: about === "meaning" ? [...choices, leave] : choices,
    chosen: chosenOf(answer),
    change: (chosen: string) => send(answerAsk(answer, chosen)),
  };
}
