import { Fragment } from "preact";
import type { WeekChange, WeekLine, WeekView } from "../../actions/messages";
import { changeOf } from "../../actions/messages/week-change";
import { LadderChart } from "../../charts/ladder-chart";
import { fieldRefusals, mostContacts } from "../../words/field-refusals";
import { sentence } from "../../words/pages";
import { printedNumbers } from "../../words/printed-numbers";
import { sentenceWords } from "../../words/reasons-figures";
import { weekViewWords as words } from "../../words/week-view";
import type { State } from "../state";
import { BlockField } from "./block-field";
import { CountField } from "./count-field";
import { DeletedRows } from "./deleted-rows";
import { leadSession, otherSessions } from "./lead-session";
import { LoadField } from "./load-field";
import { notYetShown } from "./not-yet-shown";
import { BarOfSession, IfWritten, OnTheDay } from "./session-parts";
import type { Dispatch } from "./sidebar";
import { TypedField } from "./typed-field";

/** One athlete's proposal: why, the fields to change, what follows, the day's decision. */
export function WeekFields({
  line,
  week,
  state,
  dispatch,
}: {
  readonly line: WeekLine;
  readonly week: Pick<WeekView, "stepKg" | "numbers">;
  readonly state: Pick<State, "changes" | "shown">;
  readonly dispatch: Dispatch;
}) {
  const change = (part: Omit<WeekChange, "athlete">) =>
    dispatch({ type: "changed", change: { athlete: line.athlete, ...part } });
  const first = leadSession(line);
  const ladders = line.ahead.filter(({ steps }) => steps.length > 1);
  const { numbers } = week;
  const wished = notYetShown(
    changeOf(state.changes, line.athlete),
    changeOf(state.shown, line.athlete),
  );
  const fields = first && { ...first, ...wished };
  const leftOut = wished.leaveOut ?? line.leftOut;
  const noRack = wished.noRack ?? line.noRack;
  const { withUnit } = printedNumbers(numbers);
  const loads = { week, state, dispatch };
  return (
    <>
      <p class="lead">
        {first && !line.leftOut
          ? words.planned(
              line.sessions.map(({ lift, sets, reps, instead, loadKg, dayWords }) => ({
                day: dayWords,
                what: [`${sets}×${reps}`, lift, instead === "" ? `at ${withUnit(loadKg)}` : instead]
                  .filter(Boolean)
                  .join(" "),
              })),
            )
          : sentenceWords(words.nothing)}
        {line.brief !== "" && ` ${sentenceWords(line.brief)}`}
      </p>
      <section>
        <h2>{words.why}</h2>
        <ul class="dashes">
          {line.why.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      </section>
      {first && fields && (
        <section>
          <div class="split">
            <h2>
              {words.change}
              {line.sessions.some(({ lift }) => lift !== "") && (
                <span class="soft">, {first.lift || line.exercise}</span>
              )}
            </h2>
            <button type="button" class="btn plain" onClick={() => change({ leaveOut: !leftOut })}>
              {leftOut ? words.takeIn : words.leaveOut}
            </button>
          </div>
          <div class="fields">
            <BlockField line={line} session={first} state={state} dispatch={dispatch} />
            <CountField
              label={words.setsASession}
              value={fields.sets}
              counts={[1, 2, 3, 4, 5]}
              commit={(sets) => change({ sets })}
            />
            <LoadField line={line} session={first} {...loads} />
            <CountField
              label={words.sessionsThisWeek}
              value={wished.sessions ?? line.sessions.length}
              counts={[1, 2]}
              commit={(sessions) => change({ sessions })}
            />
            <label class="field">
              <span>{words.day}</span>
              <select
                value={fields.day}
                onChange={({ currentTarget }) => change({ day: currentTarget.value })}
              >
                {line.days.map(({ day, label, why }) => (
                  // On such a day nothing is proposed, and with the fields the way back would be gone.
                  <option key={day} value={day} disabled={why === "may-not-lift"}>
                    {label}
                  </option>
                ))}
              </select>
            </label>
            <TypedField
              label={words.contacts}
              value={String(fields.contacts)}
              most={mostContacts}
              refusal={fieldRefusals.contacts}
              commit={(text) => change({ contacts: Number(text) })}
            />
            <TypedField
              label={words.stack}
              value={fields.stack}
              refusal={fieldRefusals.stack}
              commit={(stack) => change({ stack })}
            />
          </div>
          <p>
            <button type="button" class="btn plain" onClick={() => change({ noRack: !noRack })}>
              {noRack ? words.rackAgain : words.noRack}
            </button>
          </p>
          <BarOfSession session={first} numbers={numbers} />
          <div aria-live="polite">
            <h3>{words.ifWritten}</h3>
            <IfWritten session={first} numbers={numbers} />
          </div>
        </section>
      )}
      {first && <OnTheDay session={first} numbers={numbers} />}
      {!line.leftOut &&
        otherSessions(line).map((session) => (
          <section key={session.day}>
            <h2>{sentence([session.lift, session.dayWords].filter(Boolean).join(", "))}</h2>
            {session.turn !== "" && (
              <div class="fields">
                {session.instead === "" && (
                  <BlockField line={line} session={session} state={state} dispatch={dispatch} />
                )}
                <LoadField line={line} session={session} {...loads} />
              </div>
            )}
            <BarOfSession session={session} numbers={numbers} />
            <div aria-live="polite">
              <IfWritten session={session} numbers={numbers} />
            </div>
            <OnTheDay session={session} numbers={numbers} />
          </section>
        ))}
      {line.daysSaid.length > 0 && (
        <section>
          <h2>{words.days}</h2>
          <ul class="dashes">
            {line.daysSaid.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </section>
      )}
      {ladders.length > 0 && (
        <section>
          <h2>{words.ahead}</h2>
          {ladders.map(({ lift, steps }) => (
            <Fragment key={lift}>
              {line.ahead.length > 1 && <p class="soft small">{sentence(lift)}</p>}
              <LadderChart
                athlete={line.ahead.length > 1 ? `${line.athlete}, ${lift}` : line.athlete}
                steps={steps}
                numbers={numbers}
              />
            </Fragment>
          ))}
        </section>
      )}
      <p class="act">
        <button
          type="button"
          class="btn"
          onClick={() => dispatch({ type: "wrote", athletes: [line.athlete] })}
        >
          {words.writeOne(line.athlete)}
        </button>{" "}
        <DeletedRows rows={line.deleted} athletes={[line.athlete]} dispatch={dispatch} />
      </p>
    </>
  );
}
