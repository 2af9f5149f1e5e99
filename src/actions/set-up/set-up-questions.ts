import type { ColumnQuestion } from "../../rows/header/decide-columns";
import { fieldHeading } from "../../rows/header/field-heading";
import type { TabQuestion } from "../../rows/layout/tab-question";
import type { TableName } from "../../rows/table-name";
import type { Choice, SetUpQuestion } from "../messages";
import type { ReadWorkbook } from "../read-workbook";

/** A choice whose words are the answer. */
export const plainChoice = (answer: string): Choice => ({ answer, words: answer });

const mostOffered = 40;

/** What has to be asked: of whole tabs first, as more rows hang on it, then of columns. */
export function questionsShown(read: ReadWorkbook): SetUpQuestion[] {
  return [
    ...read.tabQuestions.map(({ tab, question }) => ({
      tabId: tab.id,
      tab: tab.name,
      about: question.about,
      written: question.said,
      samples: question.samples,
      guess: question.guess,
      choices: tabChoicesOf(read, question).map(plainChoice),
    })),
    ...read.questions.map(({ tab, table, question }) => ({
      tabId: tab.id,
      tab: tab.name,
      about: question.about,
      column: question.column,
      heading: question.heading,
      samples: question.samples,
      guess: question.guess,
      choices: columnChoices(table, question),
    })),
  ];
}

function columnChoices(table: TableName, { about, choices }: ColumnQuestion): readonly Choice[] {
  return about === "meaning" ? fieldChoices(table, choices) : choices.map(plainChoice);
}

/** Meanings by the headings of our own tabs. */
export function fieldChoices(table: TableName, fields: readonly string[]): Choice[] {
  return fields.map((field) => ({ answer: field, words: fieldHeading(table, field) }));
}

/** Lifts and athletes the workbook knows are offered where one has to be named. */
function tabChoicesOf({ rows }: ReadWorkbook, question: TabQuestion): readonly string[] {
  if (question.about === "athlete") return rows.athletes.map(({ athlete }) => athlete);
  if (question.about === "exercise")
    return [...new Set(rows.sets.map(({ exercise }) => exercise))].slice(0, mostOffered);
  return question.choices;
}
