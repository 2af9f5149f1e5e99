import { tabToConfirmWords as words } from "../../words/row-check";
import { sayRowIssue } from "../../words/row-issues";
import type { RowProblem } from "../messages";
import { type ReadWorkbook, sureEnough } from "../read-workbook";

/**
 * Tabs that look like a table and of which nothing counts until the coach says so, each once, at its
 * header row.
 */
export function tabsToConfirm({ tabs }: ReadWorkbook): RowProblem[] {
  const used = new Set(
    tabs.flatMap(({ tab, sureness }) => (sureness < sureEnough ? [] : [tab.id])),
  );
  const open = tabs.filter(({ tab }) => !used.has(tab.id));
  return open.flatMap(({ tab, understanding: { headerRow, reading } }, at) => {
    if (open.findIndex((one) => one.tab.id === tab.id) < at) return [];
    const tables = open.filter((one) => one.tab.id === tab.id).map(({ table }) => table);
    const lacking = reading.issues.find(({ code }) => code === "column-missing");
    return [
      {
        tab: tab.name,
        tabId: tab.id,
        cell: `A${Math.max(1, headerRow)}`,
        found: lacking === undefined ? words.found : sayRowIssue(lacking).found,
        why: words.why,
        toDo: words.toDo(tables),
        kind: "table-to-confirm",
        mend: null,
        right: null,
      },
    ];
  });
}
