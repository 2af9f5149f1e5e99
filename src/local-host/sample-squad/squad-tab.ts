import { isoOf, today } from "./season-days";
import type { SampleCell, SampleTable } from "./table";

const headings = [
  "Athlete",
  "May do",
  "Word",
  "Since",
  "Value",
  "From baseline",
  "Wobble",
  "Loss that would show",
  "Season, week by week",
  "Last session",
  "Rows not used",
  "Notes",
];
const blank: SampleCell[] = [];

/** The Squad tab: today in one cell, the whole squad by one formula, the rows not used below it. */
export function squadTab(): SampleTable {
  return {
    name: "Squad",
    rows: [
      ["Quillbeck Running Club: squad", ...Array(8).fill(null), "Today", isoOf(today)],
      blank,
      headings,
      [
        "=SQUAD_TABLE(Athletes!A:J, Availability!A:H, Sets!A:Q, Jumps!A:K, Diary!A:M, Races!A:G, $K$1, Plates!A:C, Rules!A:B)",
      ],
      ...Array(14).fill(blank),
      ["Sets not used", "Found", "What to do", "Why it matters"],
      ['=ROW_CHECK(Sets!A:Q, "Sets")'],
    ],
  };
}
