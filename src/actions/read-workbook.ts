import type { Day } from "../coaching/calendar/day";
import type { SquadRows } from "../coaching/record/squad-rows";
import type { Cells } from "../rows/cells";
import type { ColumnQuestion } from "../rows/header/decide-columns";
import type { RowNote } from "../rows/layout/row-note";
import type { TabQuestion } from "../rows/layout/tab-question";
import { joinedNames } from "../rows/name/joined-names";
import { withNames } from "../rows/name/name-answers";
import { withRaceNames } from "../rows/name/race-names";
import type { RowIssue } from "../rows/reading";
import { squadRules } from "../rows/table/read-rules";
import type { RowOf } from "../rows/table/read-view";
import { type TableName, tableNames } from "../rows/table-name";
import type { DecimalMark } from "../rows/value/decimal-mark";
import { ownTabNames } from "../words/tabs";
import { type Answers, recallAnswers } from "./answers/answers";
import { athletesAsSquad, type ReadTab, readTab } from "./read-tab";
import { askedOfPlan } from "./row-check/planned-days";
import type { Tab, Workbook } from "./workbook";

/** A coach's whole workbook, read once. */
export type ReadWorkbook = {
  readonly rows: SquadRows;
  /** Words beside the figures, or in their place, that no record has room for. */
  readonly notes: readonly (RowNote & { readonly table: TableName; readonly tab: Tab })[];
  readonly tabs: readonly ReadTab[];
  readonly otherTabs: readonly Tab[];
  readonly issues: readonly {
    readonly tab: Tab;
    readonly issue: RowIssue;
    /** Whose row it is, as written there; "" when that cannot be read. */
    readonly athlete: string;
  }[];
  readonly questions: readonly {
    readonly tab: Tab;
    readonly table: TableName;
    readonly question: ColumnQuestion;
  }[];
  /** What has to be asked of a whole tab; each matter once, though the tab be two tables. */
  readonly tabQuestions: readonly { readonly tab: Tab; readonly question: TabQuestion }[];
  readonly answers: Answers;
  /** A tab's cells as they were read. */
  readonly cells: (tabId: number) => Cells;
  /** The decimal mark of the spreadsheet's own language. */
  readonly ownMark: () => DecimalMark;
  /** Rows that became records, and all rows with content below the headings. */
  readonly rowsRead: number;
  readonly rowsFilled: number;
};

/** Below this the coach is asked before a tab's rows count. */
export const sureEnough = 0.6;

/** Reads every tab that is one of the tables: one read of each tab, whatever its number of rows. */
export function readWorkbook(workbook: Workbook, today: Day): ReadWorkbook {
  const answers = recallAnswers(workbook);
  const all = workbook.tabs().map((tab) => ({ tab, cells: workbook.values(tab.id) }));
  const cellsOf = (tabId: number) => all.find((one) => one.tab.id === tabId)?.cells ?? [];
  const known = all.flatMap(({ tab, cells }) => readTab(tab, cells, today, answers));
  const tabs = known.some(({ table }) => table === "Athletes")
    ? known
    : [...known, ...athletesAsSquad(all, today, answers)];
  const used = tabs.filter(({ sureness }) => sureness >= sureEnough);
  const records = <T extends TableName>(table: T): RowOf[T][] =>
    used.flatMap(
      (one) => (one.table === table ? one.understanding.reading.records : []) as RowOf[T][],
    );
  const named = <Row extends { readonly athlete: string }>(rows: readonly Row[]) =>
    withNames(rows, answers.names);
  const counts = used.map(({ understanding }) => understanding.reading);
  const rowsRead = counts.reduce((sum, reading) => sum + reading.rowsRead, 0);
  const rowsReported = counts.reduce((sum, reading) => sum + reading.rowsReported, 0);
  const taken = new Set(tabs.map(({ tab }) => tab.id));
  const isOfPlan = askedOfPlan(
    all.find(({ tab }) => tab.name === ownTabNames.nextWeek)?.cells ?? [],
  );
  return {
    rows: {
      athletes: records("Athletes"),
      availability: named(records("Availability")),
      sets: named(records("Sets")),
      jumps: named(records("Jumps")),
      diary: named(records("Diary")),
      runs: named(records("Runs")),
      races: withRaceNames(records("Races"), answers.names, records("Athletes")),
      plates: records("Plates"),
      rules: squadRules(records("Rules")),
    },
    notes: named(
      used.flatMap(({ tab, table, understanding }) =>
        (understanding.reading.notes ?? []).map((note) => ({ ...note, table, tab })),
      ),
    ),
    tabs,
    otherTabs: all.flatMap(({ tab }) => (taken.has(tab.id) ? [] : [tab])),
    issues: eachOnce(
      used.flatMap(({ tab, understanding }) => {
        const column = understanding.columns.find(({ field }) => field === "athlete")?.column;
        const cells = joinedNames(cellsOf(tab.id));
        const issues = understanding.reading.issues.filter((issue) => !isOfPlan(issue));
        return issues.map((issue) => ({
          tab,
          issue,
          athlete: String(
            column === undefined
              ? // A grid has its names first.
                (cells[issue.row - 1]?.find((cell) => typeof cell === "string" && cell !== "") ??
                  "")
              : (cells[issue.row - 1]?.[column - 1] ?? ""),
          ),
        }));
      }),
    ),
    questions: tabs.flatMap(({ tab, table, understanding }) =>
      understanding.questions.map((question) => ({ tab, table, question })),
    ),
    tabQuestions: tabs.flatMap(({ tab, understanding }, at) => {
      const before = tabs.slice(0, at).filter((one) => one.tab.id === tab.id);
      const asked = before.flatMap((one) => one.understanding.tabQuestions.map(matterOf));
      return understanding.tabQuestions
        .filter((question) => !asked.includes(matterOf(question)))
        .map((question) => ({ tab, question }));
    }),
    answers,
    cells: cellsOf,
    ownMark: workbook.decimalMark,
    rowsRead,
    rowsFilled: rowsRead + rowsReported,
  };
}

/** A cell that two tables of a tab find fault with for one reason, as with its day, is told of once. */
function eachOnce(issues: ReadWorkbook["issues"]): ReadWorkbook["issues"] {
  const told = new Set<string>();
  return issues.filter(({ tab, issue: { cell, code } }) => {
    const key = `${tab.id}|${cell}|${code}`;
    return !told.has(key) && told.add(key);
  });
}

const matterOf = ({ about, said }: TabQuestion): string => `${about}|${said}`;

/** The tables no tab was taken for. */
export function missingTables(read: ReadWorkbook): TableName[] {
  return tableNames.filter((table) => !read.tabs.some((one) => one.table === table));
}
