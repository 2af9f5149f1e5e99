import type { RequestName } from "./requests";

/** What each request does, for the script's declarations; in a file of its own, as no call reads it. */
export const requestSummaries: Readonly<Record<RequestName, string>> = {
  squadView: "The squad's words and reasons.",
  athleteView: "One athlete's reasons and pictures.",
  diaryView: "One athlete's diary beside the season.",
  writeDiaryAnswer: "Writes an athlete's answer into the Diary row of that day.",
  rowCheck: "Every cell that could not be used.",
  goToCell: "Selects a cell.",
  mendCell: "Writes one proposed value into its cell.",
  highlightSquad: "Highlights the words on the Squad tab.",
  setUpView: "Which tab is which table, and what to ask.",
  makeCleanTabs: "Makes clean tabs for the tables that are missing.",
  answerTable: "Remembers which table a tab is.",
  forgetTable: "Forgets which table a tab was said to be.",
  answerTab: "Remembers what holds for a whole tab.",
  forgetTab: "Forgets what was said to hold for a whole tab.",
  answerColumn: "Remembers what a column means.",
  forgetColumn: "Forgets what a column was said to be.",
  answerName: "Remembers that two spellings are one athlete, or two.",
  forgetName: "Forgets that two spellings are one athlete.",
  forgetDamaged: "Forgets what was remembered and can no longer be read.",
  weekView: "Next week's sets as proposed.",
  writeWeek: "Writes a week's rows into the Next week tab.",
  writeSeason: "Writes the Season tab.",
  printPages: "What a week's cards, rack plan, page for the head coach or charts say.",
  takeBackWeek: "Takes a week's unchanged rows back.",
};
