import type { Day } from "../coaching/calendar/day";
import { type TableName, tableNames } from "../rows/table-name";
import { setUpWords } from "../words/set-up";
import { recallAnswers } from "./answers";
import type { SetUpAnswer, SetUpView } from "./messages";
import { missingTables, type ReadWorkbook, readWorkbook } from "./read-workbook";
import type { Tab, Workbook } from "./workbook";

/** Which tab was taken for which table, what is missing, and what has to be asked. */
export function setUpView(workbook: Workbook, today: Day): SetUpView {
  const read = readWorkbook(workbook, today);
  const answers = recallAnswers(workbook);
  return {
    tabs: [
      ...read.tabs.map(({ tab, table, sureness, understanding }) => ({
        tabId: tab.id,
        tab: tab.name,
        table: table as string | null,
        sure: answers.tables.has(tab.id)
          ? setUpWords.answered
          : sureness >= 0.6
            ? setUpWords.sure
            : setUpWords.unsure,
        rows: understanding.reading.rowsRead,
      })),
      ...read.otherTabs.map((tab) => ({
        tabId: tab.id,
        tab: tab.name,
        table: null,
        sure: answers.tables.has(tab.id) ? setUpWords.answered : setUpWords.leftAlone,
        rows: 0,
      })),
    ],
    tables: tableNames,
    missing: missingTables(read),
    questions: read.questions.map(({ tab, question }) => ({
      tabId: tab.id,
      tab: tab.name,
      column: question.column,
      heading: question.heading,
      about: question.about,
      samples: question.samples,
      guess: question.guess,
      choices: question.choices,
    })),
    answered: workbookTabs(read).flatMap((tab) => answeredColumns(read, tab)),
    names: answers.names.same.map(({ written, athlete }) => ({ spelling: written, athlete })),
    whoSees: setUpWords.whoSees,
  };
}

/** Every tab once; one may hold two tables. */
function workbookTabs({ tabs, otherTabs }: ReadWorkbook): Tab[] {
  const all = [...tabs.map(({ tab }) => tab), ...otherTabs];
  return all.filter(({ id }, at) => all.findIndex((one) => one.id === id) === at);
}

function answeredColumns({ answers, cells }: ReadWorkbook, tab: Tab): SetUpAnswer[] {
  const now = answers.columns.of(tab.id, cells(tab.id)).columns;
  return answers.columns.said(tab.id).map(({ heading, column, ...answer }, at) => ({
    tabId: tab.id,
    tab: tab.name,
    heading,
    column: now[at]?.column ?? column,
    said: setUpWords.said(answer),
  }));
}

/** A table's name from a message; the schema has let nothing else through. */
export function tableNamed(text: string | null): TableName | null {
  return tableNames.find((name) => name === text) ?? null;
}
