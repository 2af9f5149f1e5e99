import type { WeekLine, WeekSession } from "../../actions/messages";
import { pageLabels } from "../../words/page-labels";
import { type PrintedNumbers, printedNumbers } from "../../words/printed-numbers";
import { weekViewWords as words } from "../../words/week-view";
import type { State } from "../state";
import { Cautions } from "./cautions";
import { DeletedRows } from "./deleted-rows";
import { leadSession } from "./lead-session";
import type { Dispatch } from "./sidebar";
import { Word } from "./words";

/** Next week's sets: the odd ones first, the rest one scan, then write. */
export function WeekPage({
  state,
  dispatch,
}: {
  readonly state: State;
  readonly dispatch: Dispatch;
}) {
  const { week } = state;
  if (!week) return null;
  if (week.lines.length === 0) return <p class="empty">{words.empty}</p>;
  const numbers = printedNumbers(week.numbers);
  const odd = week.lines.filter((line) => line.odd);
  const rest = week.lines.filter((line) => !line.odd);
  return (
    <>
      <div class="top">
        <label class="week">
          <span>{words.weekOf}</span>{" "}
          <select
            value={state.monday ?? week.monday}
            onChange={(event) =>
              dispatch({
                type: "chose week",
                monday: (event.currentTarget as HTMLSelectElement).value,
              })
            }
          >
            {week.mondays.map(({ monday, label }) => (
              <option key={monday} value={monday}>
                {label}
              </option>
            ))}
          </select>
        </label>
        {week.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
      <p class="heads soft small" aria-hidden="true">
        <span>{words.athlete}</span>
        <span>{words.day}</span>
        <span class="num">{words.setsReps}</span>
        <span class="num">{week.numbers.unit}</span>
      </p>
      <Lines name={words.readFirst} lines={odd} numbers={numbers} dispatch={dispatch} />
      <Lines name={words.theRest} lines={rest} numbers={numbers} dispatch={dispatch} />
      <Cautions lines={week.cautions} />
      <div class="write">
        <button
          type="button"
          class={week.isWritten ? "btn" : "btn main"}
          disabled={week.rowsToWrite === 0}
          {...unlessBusy(state, () => dispatch({ type: "wrote", athletes: null }))}
        >
          {week.isWritten ? words.writeAgain : words.write(week.rowsToWrite)}
        </button>
        <p class="soft small">{week.already === "" ? words.noOther : week.already}</p>
        <DeletedRows rows={week.deleted} athletes={null} dispatch={dispatch} />{" "}
        {week.canTakeBack && (
          <button type="button" class="btn" onClick={() => dispatch({ type: "took back" })}>
            {words.takeBack}
          </button>
        )}
      </div>
      <Printing state={state} dispatch={dispatch} />
    </>
  );
}

/** A button that waits: one that is switched off while it has the focus would lose the reader's place. */
const unlessBusy = ({ busy }: State, act: () => void) => ({
  "aria-disabled": busy !== null,
  onClick: () => {
    if (busy === null) act();
  },
});

const kinds = [
  ["cards", pageLabels.printCards],
  ["rack plan", pageLabels.printRacks],
  ["week page", pageLabels.printWeek],
  ["pictures", pageLabels.printPictures],
] as const;

/** The week's pages, each one click away. */
function Printing({ state, dispatch }: { readonly state: State; readonly dispatch: Dispatch }) {
  return (
    <section class="print">
      <h2>{pageLabels.onPaper}</h2>
      <p class="soft small">{pageLabels.asShown}</p>
      {kinds.map(([kind, label]) => (
        <button
          key={kind}
          type="button"
          class="btn"
          {...unlessBusy(state, () => dispatch({ type: "printed", kind }))}
        >
          {label}
        </button>
      ))}
      {state.pages !== null && state.busy === null && (
        <p class="small">
          {state.pages.said}.{" "}
          <button type="button" class="btn" onClick={() => dispatch({ type: "printed again" })}>
            {pageLabels.again}
          </button>{" "}
          {state.printKept && (
            <button
              type="button"
              class="btn"
              onClick={() => dispatch({ type: "asked for window" })}
            >
              {pageLabels.openWindow}
            </button>
          )}
        </p>
      )}
    </section>
  );
}

function Lines({
  name,
  lines,
  numbers,
  dispatch,
}: {
  readonly name: string;
  readonly lines: readonly WeekLine[];
  readonly numbers: PrintedNumbers;
  readonly dispatch: Dispatch;
}) {
  if (lines.length === 0) return null;
  return (
    <section class="lines">
      <h2>
        {name} <span class="soft">{lines.length}</span>
      </h2>
      <ul class="list">
        {lines.map((line) => (
          <li key={line.athlete}>
            <Line line={line} numbers={numbers} dispatch={dispatch} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Line({
  line,
  numbers: { unit, mass },
  dispatch,
}: {
  readonly line: WeekLine;
  readonly numbers: PrintedNumbers;
  readonly dispatch: Dispatch;
}) {
  const first = leadSession(line);
  // The figures of the row are the lift's first session's: another lift, or one a step on, is told beside its day.
  const what = ({ lift, sets, reps, loadKg, instead }: WeekSession) =>
    [`${sets}×${reps}`, lift, instead === "" ? mass(loadKg) : instead].filter(Boolean).join(" ");
  const later = line.sessions.flatMap((one) =>
    line.leftOut || what(one) === what(first!) ? [] : [`${one.dayWords.slice(0, 3)} ${what(one)}`],
  );
  return (
    <button
      type="button"
      class="row inset four"
      onClick={() => dispatch({ type: "opened athlete", athlete: line.athlete })}
    >
      <span class="name">{line.athlete}</span>
      {first && !line.leftOut ? (
        <>
          <span class="soft">
            {line.sessions.map(({ dayWords }) => dayWords.slice(0, 3)).join(" ")}
          </span>
          <span class="num">{`${first.sets}×${first.reps}`}</span>
          <span class="num">
            {first.instead === "" ? mass(first.loadKg) : "–"}
            {first.instead === "" && <span class="off"> {unit}</span>}
          </span>
        </>
      ) : (
        <span class="soft wide">{words.nothing}</span>
      )}
      <span class="second">
        {line.dress !== "plain" && (
          <>
            <Word word={line.word} dress={line.dress} />
            <span class="off">:</span>{" "}
          </>
        )}
        <span class="soft">{[line.brief, ...later].filter((part) => part !== "").join("; ")}</span>
      </span>
    </button>
  );
}
