import { Fragment } from "preact";
import type { WeekLine, WeekView } from "../../actions/messages";
import { LadderChart } from "../../charts/ladder-chart";
import { sentence } from "../../words/pages";
import { weekViewWords as words } from "../../words/week-view";

/** Where each lift would be in the weeks ahead; nothing where none of them goes on past this one. */
export function WeeksAhead({
  line,
  numbers,
}: {
  readonly line: WeekLine;
  readonly numbers: WeekView["numbers"];
}) {
  const ladders = line.ahead.filter(({ steps }) => steps.length > 1);
  if (ladders.length === 0) return null;
  const isNamed = line.ahead.length > 1;
  return (
    <section>
      <h2>{words.ahead}</h2>
      {ladders.map(({ lift, steps }) => (
        <Fragment key={lift}>
          {isNamed && <p class="soft small">{sentence(lift)}</p>}
          <LadderChart
            athlete={isNamed ? `${line.athlete}, ${lift}` : line.athlete}
            steps={steps}
            numbers={numbers}
          />
        </Fragment>
      ))}
    </section>
  );
}
