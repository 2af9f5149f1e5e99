import type { WeekPageLine, WeekPaper } from "../actions/page-messages";
import { SeasonRow } from "../charts/season-row";
import { pageLabels as words } from "../words/page-labels";
import { paperSentences as sentences } from "../words/paper-sentences";
import { Without } from "./without";

/** The page a week for the head coach on A4: sentences first, then a line for each athlete. */
export function WeekPage({ paper }: { readonly paper: WeekPaper }) {
  return (
    <article class="page sheet weekly">
      <header>
        <h1>{paper.title}</h1>
        <p class="r">{paper.written}</p>
      </header>
      <Without without={paper.without} />
      <ol>
        {paper.sentences.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ol>
      <table>
        <thead>
          <tr>
            {[...words.weekHeads, paper.planned].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {paper.lines.map((line) => (
            <Line key={line.athlete} line={line} from={paper.from} to={paper.to} />
          ))}
        </tbody>
      </table>
      <h2>{words.weeksAhead}</h2>
      <table class="wk">
        <thead>
          <tr>
            <th scope="col">{words.weekHead}</th>
            <th scope="col">{words.raceHead}</th>
            <th scope="col">{words.gymHead}</th>
          </tr>
        </thead>
        <tbody>
          {paper.weeks.map(({ week, race, gym }) => (
            <tr key={week}>
              <th scope="row" class="nowrap">
                {week}
              </th>
              <td>{race}</td>
              <td>{gym}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <footer class="two">
        <p>
          <b>{words.readingName}</b> {sentences.reading}
        </p>
        <p>
          <b>{words.howSureName}</b> {paper.howSure}
        </p>
      </footer>
    </article>
  );
}

const dressed = {
  low: "word slipping",
  high: "word rising",
  unsure: "word few",
  plain: "",
} as const;

function Line({
  line,
  from,
  to,
}: {
  readonly line: WeekPageLine;
  readonly from: string;
  readonly to: string;
}) {
  const { dress, series } = line;
  return (
    <tr>
      <th scope="row">
        {line.athlete}
        <small>{line.event}</small>
      </th>
      <td class="ch">
        {series !== null && (
          <SeasonRow
            from={from}
            to={to}
            points={series.points}
            band={series.band}
            since={line.since}
            way={dress === "low" ? "low" : dress === "high" ? "high" : "plain"}
            races={line.races}
          />
        )}
      </td>
      <td>
        <span class={dressed[dress]}>{line.word}</span>
        {line.words}
        {line.small !== "" && <small>{line.small}</small>}
      </td>
      <td class="nowrap">{line.sessions}</td>
      <td>{line.mayDo}</td>
      <td>
        <b class="nowrap">{line.next}</b>
        <small>{line.nextDays}</small>
      </td>
    </tr>
  );
}
