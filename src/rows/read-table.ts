import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import { massUnitOf } from "./header/answered-mass-unit";
import { carriedDown } from "./header/carried-down";
import { type ColumnAnswers, withAnswers } from "./header/column-answers";
import { neededFields } from "./header/columns";
import { type ColumnDecision, type ColumnQuestion, decideColumns } from "./header/decide-columns";
import { findHeader, missingOf } from "./header/find-header";
import { questionsOfReading } from "./header/questions-of-reading";
import { IssueLog } from "./issue-log";
import { chooseLayout, type LayoutName } from "./layout/choose-layout";
import { noTabAnswers, type TabAnswers } from "./layout/tab-answers";
import { likelyAthlete } from "./layout/tab-athlete";
import { constantsOf } from "./layout/tab-constants";
import type { TabQuestion } from "./layout/tab-question";
import { rowSamples, tabQuestions } from "./layout/tab-questions";
import { titleYear } from "./layout/title-year";
import { type NameAnswers, noNameAnswers } from "./name/name-answers";
import { named } from "./name/named-reading";
import type { Reading } from "./reading";
import { withConstants } from "./table/constant-columns";
import { type RowOf, viewReaders } from "./table/read-view";
import { endOfRows } from "./table/trim-padding";
import { unread } from "./table/unread";
import { viewOf } from "./table/view-of";
import type { TableName } from "./table-name";
import type { TableView } from "./table-view";

export type ReadOptions = {
  /** The tab's name: it may be an athlete's, or carry a year. */
  readonly title?: string;
  /** Settles the year of dates written without one. */
  readonly today?: Day | null;
  /** What the coach said about columns. */
  readonly answers?: ColumnAnswers;
  /** The coach said that it is this table. */
  readonly said?: boolean;
  /** What the coach said of the whole tab. */
  readonly tab?: TabAnswers;
  /** What the coach said about spellings of names. */
  readonly names?: NameAnswers;
};

/** How a range was understood, beside what was read from it. */
export type Understanding<T extends TableName> = {
  readonly reading: Reading<RowOf[T]>;
  readonly layout: LayoutName;
  /** Row of the header from 1; 0 when there is none. */
  readonly headerRow: number;
  readonly columns: readonly ColumnDecision[];
  readonly questions: readonly ColumnQuestion[];
  readonly tabQuestions: readonly TabQuestion[];
};

/**
 * Reads a range as one of the tables: finds its header, then turns every row into a record or into
 * issues by cell. Nothing is thrown for bad cells and nothing is left out unsaid: the four counts add
 * up to the rows given.
 *
 * Issues for the whole table: `no-header` (facts `needed`), `column-missing` (facts `field`).
 */
export function readTable<T extends TableName>(
  table: T,
  cells: Cells,
  options: ReadOptions = {},
): Reading<RowOf[T]> {
  return understandTable(table, cells, options).reading;
}

/** Reads a range and says how its columns were understood and what has to be asked. */
export function understandTable<T extends TableName>(
  table: T,
  cells: Cells,
  options: ReadOptions = {},
): Understanding<T> {
  const end = endOfRows(cells);
  const answers = options.answers ?? null;
  const context = {
    table,
    cells,
    end,
    title: options.title ?? "",
    // Asked for only where a layout needs it: a reading that never did holds for any day.
    get today() {
      return options.today ?? null;
    },
    dateOrder: answers?.columns.find(({ dateOrder }) => dateOrder !== undefined)?.dateOrder ?? null,
    massUnit: massUnitOf(answers),
    tab: options.tab ?? noTabAnswers,
    said: options.said ?? false,
  };
  const found = findHeader(
    table,
    cells,
    end,
    answers?.headerRow === undefined ? null : answers.headerRow - 1,
  );
  const log = new IssueLog(table);
  const decided =
    found === null
      ? null
      : decideColumns(
          table,
          cells,
          found.first,
          end,
          withAnswers(found, answers, found.line),
          found.line,
          answers,
        );
  const year = titleYear(context);
  const unknown = decided?.header.unknown ?? [];
  const understood = (constants: Readonly<Record<string, string>>) => {
    if (found === null || decided === null) {
      const missing = missingOf(table, {});
      return { view: null, missing, layout: chooseLayout(context, null, missing, []) };
    }
    const more = withConstants(cells, found.first, constants);
    const fields = { ...decided.header.fields, ...more.fields };
    const missing = missingOf(table, fields);
    const header = { ...decided.header, fields };
    const view = viewOf(table, more.cells, end, found, header, year, log);
    return { view, missing, layout: chooseLayout(context, view, missing, unknown) };
  };
  const bare = understood({});
  // A layout of its own says more than a name that would hold for every row.
  const constants =
    found === null || bare.layout.unfolded !== null
      ? {}
      : constantsOf(context, found, bare.missing);
  const { view, missing, layout } =
    Object.keys(constants).length === 0 ? bare : understood(constants);
  const rest = {
    headerRow: (found?.row ?? -1) + 1,
    columns: carriedDown(decided?.decisions ?? [], view),
  };
  const readView = viewReaders[table] as (view: TableView) => Reading<RowOf[T]>;
  const reader = (of: TableView) => named(readView(of), options.names ?? noNameAnswers);
  if (layout.unfolded !== null) {
    const reading = layout.unfolded.read<RowOf[T]>(reader, year);
    return {
      reading,
      layout: layout.name,
      ...rest,
      questions: questionsOfReading(reading, cells, found?.first ?? 0, end),
      tabQuestions: tabQuestions(
        reading.issues,
        layout.unfolded.asks,
        // A grid that holds no sets is not asked for its lift.
        layout.name === "dates across" ? [] : rowSamples(cells, layout.unfolded.headerRow + 1, end),
      ),
    };
  }
  if (view !== null && missing.length === 0) {
    const reading = reader(view);
    return {
      reading,
      layout: "plain rows",
      ...rest,
      questions: [
        ...(decided?.questions ?? []),
        ...questionsOfReading(reading, cells, view.first, end),
      ],
      tabQuestions: [],
    };
  }
  if (end > 0) {
    if (found === null)
      log.add("no-header", 0, -1, cells[0]?.[0], { needed: neededFields[table].join(", ") }, true);
    else for (const field of missing) log.add("column-missing", found.row, -1, "", { field }, true);
  }
  const reading = unread(log, cells, found?.row ?? -1);
  return {
    reading,
    layout: "not recognised",
    ...rest,
    questions: decided?.questions ?? [],
    tabQuestions: tabQuestions(reading.issues, [], rowSamples(cells, found?.first ?? 0, end)).map(
      (question) =>
        question.about === "athlete"
          ? { ...question, guess: likelyAthlete(context.title) }
          : question,
    ),
  };
}
