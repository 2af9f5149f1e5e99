import type { WeekLine, WeekView } from "../../actions/messages";
import { printedNumbers } from "../../words/printed-numbers";
import { sentenceWords } from "../../words/reasons-figures";
import { weekViewWords as words } from "../../words/week-view";
import { ChangeFields } from "./change-fields";
import { DeletedRows } from "./deleted-rows";
import type { FieldsGiven } from "./fields-given";
import { leadSession, otherSessions } from "./lead-session";
import { OtherSession } from "./other-session";
import { OnTheDay } from "./session-parts";
import { WeeksAhead } from "./weeks-ahead";

/** One athlete's proposal: why, the fields to change, what follows, the day's decision. */
export function WeekFields(given: FieldsGiven) {
  const { line, week, dispatch } = given;
  const { numbers } = week;
  const first = leadSession(line);
  return (
    <>
      <p class="lead">
        {first && !line.leftOut ? plannedWords(line, numbers) : sentenceWords(words.nothing)}
        {line.brief !== "" && ` ${sentenceWords(line.brief)}`}
      </p>
      <Listed heading={words.why} lines={line.why} />
      {first && <ChangeFields session={first} {...given} />}
      {first && <OnTheDay session={first} numbers={numbers} />}
      {!line.leftOut &&
        otherSessions(line).map((session) => (
          <OtherSession key={session.day} session={session} {...given} />
        ))}
      {line.daysSaid.length > 0 && <Listed heading={words.days} lines={line.daysSaid} />}
      <WeeksAhead line={line} numbers={numbers} />
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

/** "5×5 at 80 kg, Tue 30 Jun and Thu 2 Jul." */
function plannedWords({ sessions }: WeekLine, numbers: WeekView["numbers"]): string {
  const { withUnit } = printedNumbers(numbers);
  return words.planned(
    sessions.map(({ lift, sets, reps, instead, loadKg, dayWords }) => ({
      day: dayWords,
      what: [`${sets}×${reps}`, lift, instead === "" ? `at ${withUnit(loadKg)}` : instead]
        .filter(Boolean)
        .join(" "),
    })),
  );
}

function Listed({
  heading,
  lines,
}: {
  readonly heading: string;
  readonly lines: readonly string[];
}) {
  return (
    <section>
      <h2>{heading}</h2>
      <ul class="dashes">
        {lines.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </section>
  );
}
