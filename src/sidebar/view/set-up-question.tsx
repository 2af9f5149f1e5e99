import { useState } from "preact/hooks";
import type { SetUpQuestion } from "../../actions/messages";
import { askWords, typedWords } from "../../words/questions";
import { sidebarWords as words } from "../../words/sidebar";
import { answerAsk } from "../take-back";

export type AskServer = (name: string, message: Readonly<Record<string, unknown>>) => void;

/** Matters whose answer is typed; what the workbook knows is offered while typing. */
const isTyped = (about: SetUpQuestion["about"]): about is keyof typeof typedWords =>
  about in typedWords;

/** One question with three values it is about, its answers, and a button to remember one. */
export function Question({
  question,
  ask,
}: {
  readonly question: SetUpQuestion;
  readonly ask: AskServer;
}) {
  const { about, samples, guess, choices } = question;
  const [chosen, choose] = useState(guess ?? "");
  const meaning = about === "meaning";
  const ready = meaning || chosen.trim() !== "";
  return (
    <fieldset>
      <legend>{askWords(question)}</legend>
      {samples.length > 0 && <p class="soft">{words.holds(samples)}</p>}
      {isTyped(about) ? (
        <Typed
          label={typedWords[about]}
          value={chosen}
          offered={choices.map(({ answer }) => answer)}
          type={choose}
        />
      ) : (
        choices.map(({ answer, words: text }) => (
          <Radio
            key={answer}
            text={text}
            checked={chosen === answer}
            choose={() => choose(answer)}
          />
        ))
      )}
      {meaning && (
        <Radio text={words.leaveAlone} checked={chosen === ""} choose={() => choose("")} />
      )}
      <p class="buttons">
        <button
          type="button"
          class="btn"
          disabled={!ready}
          onClick={() => {
            const { name, message } = answerAsk(question, chosen);
            ask(name, message);
          }}
        >
          {words.remember}
        </button>{" "}
        <span class="soft">{words.askedOnce}</span>
      </p>
    </fieldset>
  );
}

function Radio({
  text,
  checked,
  choose,
}: {
  readonly text: string;
  readonly checked: boolean;
  readonly choose: () => void;
}) {
  return (
    <label class="choice">
      <input type="radio" name="answer" checked={checked} onChange={choose} /> {text}
    </label>
  );
}

function Typed({
  label,
  value,
  offered,
  type,
}: {
  readonly label: string;
  readonly value: string;
  readonly offered: readonly string[];
  readonly type: (value: string) => void;
}) {
  return (
    <label class="field">
      <span>{label}</span>
      <input
        type="text"
        list="offered"
        value={value}
        maxLength={80}
        onInput={(event) => type((event.currentTarget as HTMLInputElement).value)}
      />
      <datalist id="offered">
        {offered.map((one) => (
          <option key={one} value={one} />
        ))}
      </datalist>
    </label>
  );
}
