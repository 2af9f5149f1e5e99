import { withTabAnswer } from "../../rows/layout/with-tab-answer";
import type { TableName } from "../../rows/table-name";
import { answerWords } from "../../words/set-up";
import type { Workbook } from "../workbook";
import { changeAnswers, replaced, type StoredTabAnswer } from "./stored-answers";

/** Remembers which table a tab is, or that it is none. */
export function answerTable(workbook: Workbook, tabId: number, table: TableName | null): void {
  changeAnswers(workbook, ({ tables }) => ({ tables: replaced(tables, tabId, table) }));
}

/** Forgets which table a tab was said to be: it is found by its headings again. */
export function forgetTable(workbook: Workbook, tabId: number): void {
  changeAnswers(workbook, ({ tables }) => ({ tables: tables.filter(([id]) => id !== tabId) }));
}

/** Remembers what holds for a whole tab. Throws a sentence for an answer that cannot be one. */
export function answerTab(workbook: Workbook, tabId: number, said: StoredTabAnswer): void {
  if (withTabAnswer({}, said.about, said.said, said.answer) === null)
    throw new Error(answerWords.notAnAnswer(said.about, said.answer));
  changeAnswers(workbook, ({ tabs }) => ({
    tabs: replaced(tabs, tabId, [...others(tabs, tabId, said), said]),
  }));
}

/** Forgets what was said to hold for a whole tab: it is asked again where it is still open. */
export function forgetTab(
  workbook: Workbook,
  tabId: number,
  said: Pick<StoredTabAnswer, "about" | "said">,
): void {
  changeAnswers(workbook, ({ tabs }) => ({
    tabs: replaced(tabs, tabId, others(tabs, tabId, said)),
  }));
}

function others(
  tabs: readonly (readonly [number, StoredTabAnswer[]])[],
  tabId: number,
  { about, said }: Pick<StoredTabAnswer, "about" | "said">,
): StoredTabAnswer[] {
  const before = new Map(tabs).get(tabId) ?? [];
  return before.filter((one) => one.about !== about || one.said !== said);
}
