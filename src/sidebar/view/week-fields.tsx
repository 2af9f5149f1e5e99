import type { WeekChange, WeekLine } from "../../actions/messages";
import { BarDrawing } from "../../charts/bar-drawing";
import { LadderChart } from "../../charts/ladder-chart";
import { sentenceWords, trimmed } from "../../words/reasons-figures";
import { weekViewWords as words } from "../../words/week-view";
import type { Dispatch } from "./sidebar";

const fieldText = (event: { readonly currentTarget: EventTarget | null }) =>
  (event.currentTarget as HTMLSelectElement | HTMLInputElement).value;

/** One athlete's proposal: why, the fields to change, what follows, the day's decision. */
export function WeekFields({
  line,
  stepKg,
  dispatch,
}: {
  readonly line: WeekLine;
  /** Smallest change of load the gym's plates make, kg. */
  readonly stepKg: number;
  readonly dispatch: Dispatch;
}) {
  const change = (part: Omit<WeekChange, "athlete">) =>
    dispatch({ type: "changed", change: { athlete: line.athlete, ...part } });
  const [first] = line.sessions;
  return (
    <>
      <p class="lead">
        {first && !line.leftOut
          ? `${first.sets}×${first.reps} ${first.instead === "" ? `at ${trimmed(first.loadKg, 2)} kg` : first.instead}, ${line.sessions.map(({ dayWords }) => dayWords).join(" and ")}.`
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
      {first && (
        <section>
          <div class="split">
            <h2>{words.change}</h2>
            <button
              type="button"
              class="btn plain"
              onClick={() => change({ leaveOut: !line.leftOut })}
            >
              {line.leftOut ? words.takeIn : words.leaveOut}
            </button>
          </div>
          <div class="fields">
            <label class="field">
              <span>{words.block}</span>
              <select value={first.block} onChange={(event) => change({ block: fieldText(event) })}>
                {line.blocks.map((block) => (
                  <option key={block}>{block}</option>
                ))}
              </select>
            </label>
            <label class="field">
              <span>{words.setsThisWeek}</span>
              <select
                value={String(first.sets)}
                onChange={(event) => change({ sets: Number(fieldText(event)) })}
              >
                {[1, 2, 3, 4, 5].map((sets) => (
                  <option key={sets}>{sets}</option>
                ))}
              </select>
            </label>
            {first.instead === "" && (
              <fieldset class="field">
                <legend>{words.load}</legend>
                <div class="stepper">
                  <button
                    type="button"
                    aria-label={words.lighter}
                    onClick={() => change({ loadKg: first.loadKg - stepKg })}
                  >
                    −
                  </button>
                  <output>{trimmed(first.loadKg, 2)}</output>
                  <button
                    type="button"
                    aria-label={words.heavier}
                    onClick={() => change({ loadKg: first.loadKg + stepKg })}
                  >
                    +
                  </button>
                </div>
              </fieldset>
            )}
            <label class="field">
              <span>{words.day}</span>
              <select value={first.day} onChange={(event) => change({ day: fieldText(event) })}>
                {line.days.map(({ day, label }) => (
                  <option key={day} value={day}>
                    {label}
                  </option>
                ))}
              </select>
            </label>
            <label class="field">
              <span>{words.contacts}</span>
              <input
                type="number"
                min={0}
                max={120}
                value={first.contacts}
                onChange={(event) => change({ contacts: Number(fieldText(event)) })}
              />
            </label>
            <label class="field">
              <span>{words.stack}</span>
              <input
                value={first.stack}
                onChange={(event) => change({ stack: fieldText(event) })}
              />
            </label>
          </div>
          <p>
            <button
              type="button"
              class="btn plain"
              onClick={() => change({ noRack: !line.noRack })}
            >
              {line.noRack ? words.rackAgain : words.noRack}
            </button>
          </p>
          {first.instead === "" && (
            <p class="split">
              <BarDrawing loadKg={first.loadKg} plates={first.plates} words={first.platesWords} />
              <span class="num">
                <strong>{`${trimmed(first.loadKg, 2)} kg`}</strong>
                <br />
                <span class="soft small">{first.platesWords}</span>
              </span>
            </p>
          )}
          <div aria-live="polite">
            <h3>{words.ifWritten}</h3>
            <ul class="dashes">
              {first.ifWritten.map((text) => (
                <li key={text}>{text}</li>
              ))}
              {first.speedFloor !== null && <li>{words.floor(first.speedFloor)}</li>}
            </ul>
          </div>
        </section>
      )}
      {first && first.bands.length > 0 && (
        <section>
          <table>
            <caption>
              {words.onTheDay}
              {first.markerKg !== null && (
                <span class="soft">, {words.marker(first.markerKg)}</span>
              )}
            </caption>
            <thead class="off">
              <tr>
                <th scope="col">{words.speed}</th>
                <th scope="col">{words.lift}</th>
                <th scope="col">{words.change}</th>
              </tr>
            </thead>
            <tbody>
              {first.bands.map(({ speed, lift, change: how }) => (
                <tr key={speed}>
                  <th scope="row">{speed}</th>
                  <td class="num">
                    <strong>{lift}</strong>
                  </td>
                  <td class="num soft">{how}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
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
      {line.ahead.length > 1 && (
        <section>
          <h2>{words.ahead}</h2>
          <LadderChart athlete={line.athlete} steps={line.ahead} />
        </section>
      )}
      <p class="act">
        <button
          type="button"
          class="btn"
          onClick={() => dispatch({ type: "wrote", athletes: [line.athlete] })}
        >
          {words.writeOne(line.athlete)}
        </button>
      </p>
    </>
  );
}
