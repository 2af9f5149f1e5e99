import type { Day } from "../coaching/calendar/day";
import { type RuleKey, ruleDefinitions } from "../coaching/record/squad-rules";
import { tableNames } from "../rows/table-name";
import { setUpWords } from "../words/set-up";
import { recallAnswers } from "./answers";
import type { SetUpRule, SetUpTab, SetUpView } from "./messages";
import { missingTables, type ReadWorkbook, readWorkbook, sureEnough } from "./read-workbook";
import { answersShown } from "./set-up-answers";
import { questionsShown } from "./set-up-questions";
import type { Workbook } from "./workbook";

/** Which tab was taken for which table, what is missing, and what has to be asked. */
export function setUpView(workbook: Workbook, today: Day): SetUpView {
  const read = readWorkbook(workbook, today);
  const { names } = recallAnswers(workbook);
  return {
    tabs: tabsShown(read),
    tables: tableNames,
    missing: missingTables(read),
    questions: questionsShown(read),
    answered: answersShown(read),
    names: names.same.map(({ written, athlete }) => ({ spelling: written, athlete })),
    rules: rulesShown(read),
    whoSees: setUpWords.whoSees,
  };
}

function tabsShown({ tabs, otherTabs, answers }: ReadWorkbook): SetUpTab[] {
  const answered = ({ id }: { readonly id: number }) => answers.tables.has(id);
  return [
    ...tabs.map(({ tab, table, sureness, understanding }) => ({
      tabId: tab.id,
      tab: tab.name,
      table: table as string | null,
      sure: answered(tab)
        ? setUpWords.answered
        : sureness >= sureEnough
          ? setUpWords.sure
          : setUpWords.unsure,
      rows: understanding.reading.rowsRead,
      answered: answered(tab),
    })),
    ...otherTabs.map((tab) => ({
      tabId: tab.id,
      tab: tab.name,
      table: null,
      sure: answered(tab) ? setUpWords.answered : setUpWords.leftAlone,
      rows: 0,
      answered: answered(tab),
    })),
  ];
}

function rulesShown({ rows }: ReadWorkbook): SetUpRule[] {
  return (Object.keys(ruleDefinitions) as RuleKey[]).map((key) => {
    const { label, unit, usual, least, most } = ruleDefinitions[key];
    return { rule: label, unit, now: rows.rules[key], usual, least, most };
  });
}
