import type { WeekSession } from "../../actions/messages";
import { sentence } from "../../words/pages";
import { BlockField } from "./block-field";
import type { FieldsGiven } from "./fields-given";
import { LoadField } from "./load-field";
import { BarOfSession, IfWritten, OnTheDay } from "./session-parts";

/** A session of the week that is not like its first: its own bar and day's decision, and with a turn of its own the fields of that. */
export function OtherSession({
  session,
  ...given
}: FieldsGiven & { readonly session: WeekSession }) {
  const { line, week, state, dispatch } = given;
  const { numbers } = week;
  return (
    <section>
      <h2>{sentence([session.lift, session.dayWords].filter(Boolean).join(", "))}</h2>
      {session.turn !== "" && (
        <div class="fields">
          {session.instead === "" && (
            <BlockField line={line} session={session} state={state} dispatch={dispatch} />
          )}
          <LoadField session={session} {...given} />
        </div>
      )}
      <BarOfSession session={session} numbers={numbers} />
      <div aria-live="polite">
        <IfWritten session={session} numbers={numbers} />
      </div>
      <OnTheDay session={session} numbers={numbers} />
    </section>
  );
}
