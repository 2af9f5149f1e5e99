import type { WeekChange, WeekLine, WeekSession } from "../../actions/messages";
import { changeOf } from "../../actions/messages/week-change";
import { fieldRefusals, mostContacts } from "../../words/field-refusals";
import { weekViewWords as words } from "../../words/week-view";
import { BlockField } from "./block-field";
import { CountField } from "./count-field";
import type { FieldsGiven } from "./fields-given";
import { LoadField } from "./load-field";
import { notYetShown } from "./not-yet-shown";
import { BarOfSession, IfWritten } from "./session-parts";
import { TypedField } from "./typed-field";

/** What a coach can change of an athlete's week and its first turn, and what follows if it is written so. */
export function ChangeFields({
  session,
  ...given
}: FieldsGiven & { readonly session: WeekSession }) {
  const { line, week, state, dispatch } = given;
  const { numbers } = week;
  const change = (part: Omit<WeekChange, "athlete">) =>
    dispatch({ type: "changed", change: { athlete: line.athlete, ...part } });
  const wished = notYetShown(
    changeOf(state.changes, line.athlete),
    changeOf(state.shown, line.athlete),
  );
  const { sets, day, contacts, stack } = { ...session, ...wished };
  const leftOut = wished.leaveOut ?? line.leftOut;
  const noRack = wished.noRack ?? line.noRack;
  return (
    <section>
      <div class="split">
        <h2>
          {words.change}
          {line.sessions.some(({ lift }) => lift !== "") && (
            <span class="soft">, {session.lift || line.exercise}</span>
          )}
        </h2>
        <button type="button" class="btn plain" onClick={() => change({ leaveOut: !leftOut })}>
          {leftOut ? words.takeIn : words.leaveOut}
        </button>
      </div>
      <div class="fields">
        <BlockField line={line} session={session} state={state} dispatch={dispatch} />
        <CountField
          label={words.setsASession}
          value={sets}
          counts={[1, 2, 3, 4, 5]}
          commit={(count) => change({ sets: count })}
        />
        <LoadField session={session} {...given} />
        <CountField
          label={words.sessionsThisWeek}
          value={wished.sessions ?? line.sessions.length}
          counts={[1, 2]}
          commit={(count) => change({ sessions: count })}
        />
        <DayField days={line.days} day={day} commit={(chosen) => change({ day: chosen })} />
        <TypedField
          label={words.contacts}
          value={String(contacts)}
          most={mostContacts}
          refusal={fieldRefusals.contacts}
          commit={(text) => change({ contacts: Number(text) })}
        />
        <TypedField
          label={words.stack}
          value={stack}
          refusal={fieldRefusals.stack}
          commit={(text) => change({ stack: text })}
        />
      </div>
      <p>
        <button type="button" class="btn plain" onClick={() => change({ noRack: !noRack })}>
          {noRack ? words.rackAgain : words.noRack}
        </button>{" "}
        {line.byHand && (
          <button type="button" class="btn" onClick={() => change({ asProposed: true })}>
            {words.asProposed}
          </button>
        )}
      </p>
      <BarOfSession session={session} numbers={numbers} />
      <div aria-live="polite">
        <h3>{words.ifWritten}</h3>
        <IfWritten session={session} numbers={numbers} />
      </div>
    </section>
  );
}

function DayField({
  days,
  day,
  commit,
}: {
  readonly days: WeekLine["days"];
  readonly day: string;
  readonly commit: (day: string) => void;
}) {
  return (
    <label class="field">
      <span>{words.day}</span>
      <select value={day} onChange={({ currentTarget }) => commit(currentTarget.value)}>
        {days.map(({ day: one, label, why }) => (
          // On such a day nothing is proposed, and with the fields the way back would be gone.
          <option key={one} value={one} disabled={why === "may-not-lift"}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}
