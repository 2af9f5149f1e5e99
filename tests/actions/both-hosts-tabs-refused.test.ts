import { nextWeekHeadings } from "../../src/words/next-week-tab";
import { seasonTabWords } from "../../src/words/season-tab";
import { monday, today, tomas } from "../faults/small-club";
import type { HeldWorkbook } from "./held-workbook";
import { type Refused, refusedOnBothHosts } from "./refused-on-both-hosts";

// Tabs of ours that the coach has changed past recognising, and seasons of nothing.
const week = { today, monday, changes: [], athletes: null };
const columnOf = (heading: keyof typeof nextWeekHeadings) =>
  Object.keys(nextWeekHeadings).indexOf(heading) + 1;
/** After a first writing the coach types into one cell. */
const then =
  (request: "writeWeek" | "writeSeason", change: (book: HeldWorkbook) => void) =>
  (book: HeldWorkbook) => {
    book.ask(request, request === "writeWeek" ? week : { today });
    change(book);
  };
const isNone = (tab: string) => (book: HeldWorkbook) =>
  void book.ask("answerTable", { today, tabId: book.tabId(tab), table: null });
const loadGone = then("writeWeek", (book) =>
  book.type("Next week", 4, columnOf("load"), "what I say"),
);
const lineTwice = then("writeWeek", (book) => {
  const line = book.standing("Next week")[4]![columnOf("line") - 1]!;
  book.type("Next week", 6, columnOf("line"), line);
});

const weeks = (["writeWeek", "takeBackWeek"] as const).flatMap((request): Refused[] => {
  const message = () => (request === "writeWeek" ? week : { today, monday });
  const gone = new RegExp(`^The tab Next week .*${nextWeekHeadings.load}`);
  return [
    { request, why: "a heading is gone", prepare: loadGone, message, sentence: gone },
    {
      request,
      why: "a line stands twice",
      prepare: lineTwice,
      message,
      sentence: /stands in rows 5 and 6\. Nothing was written\./,
    },
  ];
});
const seasons: readonly Omit<Refused, "request" | "message">[] = [
  { why: "no races are read", prepare: isNone("Races"), sentence: seasonTabWords.noRaces },
  { why: "no athletes are read", prepare: isNone("Athletes"), sentence: seasonTabWords.noAthletes },
  {
    why: "its heading is gone",
    prepare: then("writeSeason", (book) => book.type("Season", 3, 1, "Who")),
    sentence: /^The tab Season has no row with the heading/,
  },
  {
    why: "an athlete stands in it twice",
    prepare: then("writeSeason", (book) => book.type("Season", 5, 1, tomas)),
    sentence: /stands in rows 4 and 5\. Nothing was written\./,
  },
];

for (const one of weeks) refusedOnBothHosts(one);
for (const one of seasons)
  refusedOnBothHosts({ ...one, request: "writeSeason", message: () => ({ today }) });
