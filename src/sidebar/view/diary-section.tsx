import { useState } from "preact/hooks";
import type { DayToAsk, DiaryView } from "../../actions/messages";
import { DiaryChart } from "../../charts/diary-chart";
import { markWords, diaryViewWords as words } from "../../words/diary-view";
import { sidebarWords } from "../../words/sidebar";
import type { Dispatch } from "./sidebar";

/** One athlete's diary: what to look at first, the sessions with its marks, days to ask about. */
export function DiarySection({
  diary,
  today,
  dispatch,
}: {
  readonly diary: DiaryView;
  readonly today: string;
  readonly dispatch: Dispatch;
}) {
  return (
    <>
      <section>
        <h2>{words.heading}</h2>
        {diary.first !== "" && (
          <p>
            <strong>{diary.first}</strong>
          </p>
        )}
        {diary.picture && (
          <>
            <DiaryChart {...diary.picture} keys={markWords} />
            <p class="soft">{diary.picture.inWords}</p>
          </>
        )}
      </section>
      <section>
        <h2>{words.ask}</h2>
        {diary.noDays !== "" && <p class="soft">{diary.noDays}</p>}
        {diary.days.map((day) => (
          // A note that has grown makes the field anew: what was written is out of it.
          <Day
            key={`${day.day} ${day.stoodOut.join()}`}
            day={day}
            athlete={diary.athlete}
            today={today}
            dispatch={dispatch}
          />
        ))}
      </section>
      <section>
        <h2>{words.differed}</h2>
        {diary.noItems !== "" && <p class="soft">{diary.noItems}</p>}
        {diary.items.map(({ item, words: said }) => (
          <p key={item}>
            <strong>{item}</strong> {said}
          </p>
        ))}
      </section>
    </>
  );
}

/** An unusual day, what stood out, and the field for what the athlete answered. */
function Day({
  day,
  athlete,
  today,
  dispatch,
}: {
  readonly day: DayToAsk;
  readonly athlete: string;
  readonly today: string;
  readonly dispatch: Dispatch;
}) {
  const [answer, setAnswer] = useState("");
  const write = () =>
    dispatch({
      type: "asked",
      ask: { name: "writeDiaryAnswer", message: { today, athlete, day: day.day, answer } },
      busy: sidebarWords.working,
    });
  return (
    <section>
      <h3>{`${day.dayWords}: ${day.value}`}</h3>
      <p class="soft">{day.size}</p>
      <ul class="dashes">
        {day.stoodOut.map((part) => (
          <li key={part}>{part}</li>
        ))}
      </ul>
      {day.answerTo === null ? (
        <p class="soft">{day.noAnswer}</p>
      ) : (
        <>
          <label class="field">
            <span>{words.answer(day.dayWords)}</span>
            <input
              type="text"
              maxLength={400}
              value={answer}
              onInput={({ currentTarget }) => setAnswer(currentTarget.value)}
            />
          </label>
          <p class="soft small">{words.goesTo(day.answerTo)}</p>
          <p class="act">
            <button type="button" class="btn" disabled={answer.trim() === ""} onClick={write}>
              {words.write}
            </button>
          </p>
        </>
      )}
    </section>
  );
}
