import type { Cells } from "../../rows/cells";
import type { ColumnAnswers } from "../../rows/header/column-answers";
import { noTabAnswers, type TabAnswers } from "../../rows/layout/tab-answers";
import { withTabAnswer } from "../../rows/layout/with-tab-answer";
import type { NameAnswers } from "../../rows/name/name-answers";
import type { TableName } from "../../rows/table-name";
import type { Workbook } from "../workbook";
import { columnPlace } from "./column-place";
import { answersKept, type StoredColumnAnswer, type StoredTabAnswer } from "./stored-answers";

/** An answer about a column, and where the column stands now; null when it is no longer there. */
export type PlacedAnswer = StoredColumnAnswer & { readonly place: number | null };

/**
 * What the coach has answered, remembered with the workbook. Tabs are known by id and columns by a
 * tag, so answers outlive renaming and moving tabs, and renaming, moving and inserting columns.
 */
export type Answers = {
  /** What was remembered can no longer be read: rows are read as though nothing had been said. */
  readonly damaged: boolean;
  /** The table a tab is; null: none of ours. */
  readonly tables: ReadonlyMap<number, TableName | null>;
  readonly columns: {
    /** For reading the tab. */
    readonly of: (tabId: number, cells: Cells) => ColumnAnswers;
    /** As remembered, for showing and changing. */
    readonly said: (tabId: number, cells: Cells) => readonly PlacedAnswer[];
  };
  readonly tabs: {
    readonly of: (tabId: number) => TabAnswers;
    readonly said: (tabId: number) => readonly StoredTabAnswer[];
  };
  readonly names: NameAnswers;
  readonly rightSets: readonly string[];
};

export function recallAnswers(workbook: Workbook): Answers {
  const { value, damaged } = answersKept.read(workbook);
  const { tables, columns, tabs, same, different, rightSets } = value;
  const columnsOf = new Map(columns);
  const tabsOf = new Map(tabs);
  const said = (tabId: number, cells: Cells): PlacedAnswer[] => {
    const answers = columnsOf.get(tabId) ?? [];
    if (answers.length === 0) return [];
    const tagged = workbook.taggedColumns(tabId);
    return answers.map((one) => ({ ...one, place: columnPlace(one, cells, tagged) }));
  };
  return {
    damaged,
    tables: new Map(tables),
    columns: {
      said,
      of: (tabId, cells) => ({
        columns: said(tabId, cells).flatMap(({ place, field, unit, dateOrder }) =>
          place === null
            ? []
            : [
                {
                  column: place,
                  ...(field === undefined ? {} : { field }),
                  ...(unit === undefined ? {} : { unit }),
                  ...(dateOrder === undefined ? {} : { dateOrder }),
                },
              ],
        ),
      }),
    },
    tabs: {
      said: (tabId) => tabsOf.get(tabId) ?? [],
      of: (tabId) =>
        (tabsOf.get(tabId) ?? []).reduce<TabAnswers>(
          (all, one) => withTabAnswer(all, one.about, one.said, one.answer) ?? all,
          noTabAnswers,
        ),
    },
    names: { same, different },
    rightSets,
  };
}
