import { squadColumns } from "../../words/squad-columns";
import { isoOf, today } from "./season-days";
import type { SampleCell, SampleTable } from "./table";

/** The tab has room to say what the season's signs are by. */
const headings = squadColumns.map((one) => (one === "Season" ? "Season, week by week" : one));
/** How the signs of the season are read; a week's halves are those of its gym days. */
const legend =
  "Season, week by week: left dot Monday to Wednesday, right dot Thursday to Sunday. Top dot: more than a wobble above baseline; bottom dot: below it. No dot: no session.";

/** The Squad tab: today in one cell, the whole squad by one formula. */
export function squadTab(): SampleTable {
  return {
    name: "Squad",
    rows: [
      ["Quillbeck Running Club: squad", ...Array<SampleCell>(8).fill(null), "Today", isoOf(today)],
      [legend],
      headings,
      [
        "=SQUAD_TABLE(Athletes!A:J, Availability!A:H, Sets!A:Q, Jumps!A:K, Diary!A:M, Races!A:G, $K$1, Plates!A:C, Rules!A:B)",
      ],
    ],
  };
}
