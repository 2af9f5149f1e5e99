import type { Day } from "../../coaching/calendar/day";
import { tableNames } from "../../rows/table-name";
import { damagedMemories } from "../answers/forget-damaged";
import { keptMatters, type SetUpTab, type SetUpView } from "../messages";
import { numberStyle } from "../number-style";
import { missingTables, type ReadWorkbook, readWorkbook, sureEnough } from "../read-workbook";
import type { Tab, Workbook } from "../workbook";
import { answersShown } from "./set-up-answers";
import { questionsShown } from "./set-up-questions";

/** Which tab was taken for which table, what is missing, and what has to be asked. */
export function setUpView(workbook: Workbook, today: Day): SetUpView {
  const read = readWorkbook(workbook, today);
  const { names } = read.answers;
  return {
    damaged: damagedMemories(workbook, keptMatters),
    tabs: tabsShown(read),
    tables: tableNames,
    missing: missingTables(read),
    questions: questionsShown(read),
    answered: answersShown(read),
    names: [names.same, names.different].flatMap((pairs) =>
      pairs.map(({ written, athlete }) => ({
        spelling: written,
        athlete,
        same: pairs === names.same,
      })),
    ),
    rightSets: read.answers.rightSets,
    rules: read.rows.rules,
    mark: numberStyle(read).mark,
  };
}

function tabsShown({ tabs, otherTabs, answers }: ReadWorkbook): SetUpTab[] {
  const found = (tab: Tab, otherwise: SetUpTab["found"]) =>
    answers.tables.has(tab.id) ? "said" : otherwise;
  return [
    ...tabs.map(({ tab, table, sureness, understanding }) => ({
      tabId: tab.id,
      tab: tab.name,
      table: table as string | null,
      found: found(tab, sureness >= sureEnough ? "sure" : "unsure"),
      rows: understanding.reading.rowsRead,
    })),
    ...otherTabs.map((tab) => ({
      tabId: tab.id,
      tab: tab.name,
      table: null,
      found: found(tab, "left alone"),
      rows: 0,
    })),
  ];
}
