import type { Day } from "../../coaching/calendar/day";
import { pageWords } from "../../words/pages";
import type { WeekChange } from "../messages";
import type { PageKind, PrintedPages } from "../page-messages";
import type { Workbook } from "../workbook";
import { cardPages } from "./card-pages";
import { picturePages } from "./picture-pages";
import { printableWeek } from "./printable-week";
import { rackPages } from "./rack-pages";
import { weekPaper } from "./week-paper";

/**
 * What one kind of page says of a week, as proposed with the coach's changes. Reads, writes nothing.
 *
 * @param monday the planned week; null is the one after the last rows
 */
export function printPages(
  workbook: Workbook,
  today: Day,
  kind: PageKind,
  monday: Day | null,
  changes: readonly WeekChange[],
): PrintedPages {
  const week = printableWeek(workbook, today, monday, changes);
  const said = (count: number) =>
    count === 0 ? pageWords.nothingToPrint : pageWords.ready[kind](count);
  switch (kind) {
    case "cards": {
      const cards = cardPages(week);
      return { kind, said: said(cards.length), cards };
    }
    case "rack plan": {
      const plans = rackPages(week);
      return { kind, said: said(plans.length), plans };
    }
    case "week page":
      return { kind, said: said(1), paper: weekPaper(week) };
    case "pictures": {
      const pictures = picturePages(week);
      return {
        kind,
        said: pictures.length === 0 ? pageWords.nobodyMoved : said(pictures.length),
        pictures,
      };
    }
  }
}
