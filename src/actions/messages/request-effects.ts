import type { RequestName } from "../requests";

type Effects = Readonly<Record<RequestName, "looks" | "writes">>;

/** Whether a request only looks, or writes into the spreadsheet or into what is kept with it. */
export const requestEffects: Effects & Readonly<Partial<Record<string, "looks" | "writes">>> = {
  squadView: "looks",
  athleteView: "looks",
  diaryView: "looks",
  writeDiaryAnswer: "writes",
  rowCheck: "looks",
  goToCell: "looks",
  mendCell: "writes",
  highlightSquad: "writes",
  setUpView: "looks",
  makeCleanTabs: "writes",
  answerTable: "writes",
  forgetTable: "writes",
  answerTab: "writes",
  forgetTab: "writes",
  answerColumn: "writes",
  forgetColumn: "writes",
  answerName: "writes",
  answerSet: "writes",
  forgetSet: "writes",
  forgetName: "writes",
  forgetDamaged: "writes",
  weekView: "looks",
  writeWeek: "writes",
  writeSeason: "writes",
  printPages: "looks",
  takeBackWeek: "writes",
};
