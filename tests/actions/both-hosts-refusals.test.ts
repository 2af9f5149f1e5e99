import { noAnswerWords } from "../../src/words/diary-view";
import { answerWords } from "../../src/words/set-up";
import { spreadsheetWords } from "../../src/words/spreadsheet";
import { today, tomas } from "../faults/small-club";
import type { HeldWorkbook, Typed } from "./held-workbook";
import { type Refused, refusedOnBothHosts } from "./refused-on-both-hosts";

// Answers and proposed values that cannot be written where they would go.
const on = (tab: string, more: object) => (book: HeldWorkbook) => ({
  today,
  tabId: book.tabId(tab),
  ...more,
});
const nowhere = (more: object) => () => ({ today, tabId: 999, ...more });
const proposed = { cell: "C2", found: "“75”", mend: "7.5" };
const { columnGone, notAnAnswer } = answerWords;

const inDiary = (
  why: string,
  sentence: string,
  note: Typed | null,
  more: object = {},
): Refused => ({
  request: "writeDiaryAnswer",
  why,
  prepare: (book) => {
    if (note !== null) book.type("Diary", 2, 6, note);
  },
  message: () => ({ today, athlete: tomas, day: "2026-06-17", answer: "new shoes", ...more }),
  sentence,
});
const formula = { formula: "=LEN(B2)", value: 14 };
const fieldsGone: Refused = {
  ...inDiary("no column is for notes", noAnswerWords.noNote("Diary"), ""),
  prepare: (book) => {
    for (const row of [1, 2]) book.type("Diary", row, 6, "");
  },
};
const noDiary: Refused = {
  ...inDiary("no tab is a Diary", noAnswerWords.noTable(), null),
  prepare: (book) => book.ask("answerTable", on("Diary", { table: null })(book)),
};

const refused: readonly Refused[] = [
  inDiary("a formula stands there", noAnswerWords.formula("Diary F2"), formula),
  inDiary("a number stands there", noAnswerWords.notText("Diary F2"), 12),
  inDiary("a day stands there", noAnswerWords.notText("Diary F2"), "2026-06-12"),
  inDiary("the cell is full", noAnswerWords.tooLong("Diary F2"), "y".repeat(49_995)),
  inDiary("no row has that day", "no row of Tomas Reyerson on 20 Jun", null, {
    day: "2026-06-20",
  }),
  inDiary("nothing was answered", noAnswerWords.nothing(), null, { answer: " \n" }),
  fieldsGone,
  noDiary,
  {
    request: "mendCell",
    why: "the cell holds something else now",
    prepare: (book) => book.type("Diary", 2, 3, 8),
    message: on("Diary", proposed),
    sentence: "C2 holds “8” now; “75” was listed.",
  },
  {
    request: "mendCell",
    why: "another value was proposed",
    message: on("Diary", { ...proposed, mend: "6" }),
    sentence: "C2 is not asked about any more.",
  },
  {
    request: "answerColumn",
    why: "its heading is gone",
    message: on("Sets", { heading: "Mass", column: 6, unit: "lb" }),
    sentence: columnGone("Mass"),
  },
  {
    request: "answerTab",
    why: "it is no mass of a bar",
    message: on("Sets", { about: "bar", written: "short", answer: "light" }),
    sentence: notAnAnswer("bar", "light"),
  },
  {
    request: "answerTab",
    why: "it is no answer to that",
    message: on("Sets", { about: "speeds", written: "", answer: "yes" }),
    sentence: notAnAnswer("speeds", "yes"),
  },
  ...(
    [
      ["mendCell", proposed],
      ["answerColumn", { heading: "Date", column: 1, field: null }],
      ["forgetColumn", { column: 1, tag: null, about: "meaning" }],
    ] as const
  ).map(
    ([request, more]): Refused => ({
      request,
      why: "its tab is gone",
      message: nowhere(more),
      sentence: spreadsheetWords.tabGone,
    }),
  ),
];

for (const one of refused) refusedOnBothHosts(one);
