import { pageWords } from "../../words/pages";
import type { PicturePage } from "../page-messages";
import { athleteViewOf } from "../squad/athlete-view";
import { laddersAhead } from "../week/ladders-ahead";
import { madeWithout } from "./made-without";
import type { PrintableWeek } from "./printable-week";

/** Athletes on one A4 page. */
const perPage = 2;

/**
 * The pictures behind the head coach's page, for those who slip or rise, slipping first: the season,
 * speed against load, set to set, and the weeks ahead.
 */
export function picturePages(week: PrintableWeek): readonly PicturePage[] {
  const { state, numbers } = week;
  const order = ["slipping", "rising"];
  const moved = week.lines
    .flatMap(({ line }) => {
      const { word } = state.hold.of(line.athlete);
      return order.includes(word) ? [{ line, word }] : [];
    })
    .sort((a, b) => order.indexOf(a.word) - order.indexOf(b.word));
  const athletes = moved.map(({ line }) => {
    const { line: told, season, loadSpeed, sets } = athleteViewOf(state, line.athlete);
    return {
      athlete: line.athlete,
      word: told.word,
      dress: told.dress,
      words: told.why,
      season,
      loadSpeed,
      sets,
      ahead: laddersAhead(line),
    };
  });
  const count = Math.ceil(athletes.length / perPage);
  return Array.from({ length: count }, (_, at) => {
    const shown = athletes.slice(at * perPage, (at + 1) * perPage);
    return {
      numbers: numbers.style,
      without: madeWithout(
        week,
        shown.map(({ athlete }) => athlete),
        [],
      ),
      page: count === 1 ? "" : pageWords.pageOf(at + 1, count),
      athletes: shown,
    };
  });
}
