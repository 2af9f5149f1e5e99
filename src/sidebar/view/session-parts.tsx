import type { WeekSession, WeekView } from "../../actions/messages";
import { BarDrawing } from "../../charts/bar-drawing";
import { printedNumbers } from "../../words/printed-numbers";
import { weekViewWords as words } from "../../words/week-view";

type Shown = { readonly session: WeekSession; readonly numbers: WeekView["numbers"] };

/** The bar as it is loaded; nothing where another exercise takes the lift's place. */
export function BarOfSession({ session, numbers }: Shown) {
  if (session.instead !== "") return null;
  const { loadKg, plates, platesWords } = session;
  return (
    <p class="split">
      <BarDrawing loadKg={loadKg} plates={plates} words={platesWords} numbers={numbers} />
      <span class="num">
        <strong>{printedNumbers(numbers).withUnit(loadKg)}</strong>
        <br />
        <span class="soft small">{platesWords}</span>
      </span>
    </p>
  );
}

/** What follows if the session is written as it stands. */
export function IfWritten({ session: { ifWritten, speedFloor }, numbers }: Shown) {
  return (
    <ul class="dashes">
      {ifWritten.map((text) => (
        <li key={text}>{text}</li>
      ))}
      {speedFloor !== null && <li>{words.floor(printedNumbers(numbers).speed(speedFloor))}</li>}
    </ul>
  );
}

/** The day's decision, by the speed of the marker or the first set; nothing where no speed is known. */
export function OnTheDay({ session: { bands, markerKg }, numbers }: Shown) {
  if (bands.length === 0) return null;
  return (
    <section>
      <table>
        <caption>
          {words.onTheDay}
          <span class="soft">
            ,{" "}
            {markerKg === null
              ? words.firstSet
              : words.marker(printedNumbers(numbers).withUnit(markerKg))}
          </span>
        </caption>
        <thead class="off">
          <tr>
            <th scope="col">{words.speed}</th>
            <th scope="col">{words.lift}</th>
            <th scope="col">{words.change}</th>
          </tr>
        </thead>
        <tbody>
          {bands.map(({ speed: seen, again, lift, change: how }) => (
            <tr key={seen}>
              <th scope="row">
                {seen}
                {again !== "" && <small class="soft">{again}</small>}
              </th>
              <td class="num">
                <strong>{lift}</strong>
              </td>
              <td class="num soft">{how}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
