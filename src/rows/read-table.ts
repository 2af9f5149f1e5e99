import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import { type ColumnAnswers, withAnswers } from "./header/column-answers";
import type { Column } from "./header/column-map";
import { neededFields } from "./header/columns";
import { type ColumnDecision, type ColumnQuestion, decideColumns } from "./header/decide-columns";
import { type FoundHeader, findHeader, missingOf } from "./header/find-header";
import { sampleColumn, threeSamples } from "./header/value-fit";
import { IssueLog } from "./issue-log";
import { chooseLayout, type LayoutName } from "./layout/choose-layout";
import { countsSets } from "./layout/counts-sets";
import { titleYear } from "./layout/title-year";
import { type NameAnswers, noNameAnswers, withNames } from "./name/name-answers";
import type { Reading } from "./reading";
import { carriedColumns } from "./table/carried-columns";
import { isBlankLine } from "./table/read-lines";
import { type RowOf, viewReaders } from "./table/read-view";
import { endOfRows } from "./table/trim-padding";
import type { TableName } from "./table-name";
import type { TableView } from "./table-view";

export type ReadOptions = {
  /** The tab's name: it may be an athlete's, or carry a year. */
  readonly title?: string;
  /** Settles the year of dates written without one. */
  readonly today?: Day;
  /** What the coach said about columns. */
  readonly answers?: ColumnAnswers;
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
  const context = { table, cells, end, title: options.title ?? "", today: options.today ?? null };
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
  const fields = decided?.header.fields ?? {};
  const missing = missingOf(table, fields);
  const view: TableView | null =
    found === null || decided === null
      ? null
      : viewOf(table, cells, end, found, decided.header, titleYear(context), log);
  const layout = chooseLayout(context, view, missing, decided?.header.unknown ?? []);
  const rest = { headerRow: (found?.row ?? -1) + 1, columns: decided?.decisions ?? [] };
  const readView = viewReaders[table] as (view: TableView) => Reading<RowOf[T]>;
  const reader = (of: TableView) => named(readView(of), options.names ?? noNameAnswers);
  if (layout.unfolded !== null) {
    const reading = layout.unfolded.read<RowOf[T]>(reader, titleYear(context));
    return {
      reading,
      layout: layout.name,
      ...rest,
      questions: questionsOf(reading, cells, found?.first ?? 0, end),
    };
  }
  if (view !== null && missing.length === 0) {
    const reading = reader(view);
    return {
      reading,
      layout: "plain rows",
      ...rest,
      questions: [...(decided?.questions ?? []), ...questionsOf(reading, cells, view.first, end)],
    };
  }
  if (end > 0) {
    if (found === null)
      log.add("no-header", 0, -1, cells[0]?.[0], { needed: neededFields[table].join(", ") }, true);
    else for (const field of missing) log.add("column-missing", found.row, -1, "", { field }, true);
  }
  const reading = unread(log, cells, found?.row ?? -1);
  return { reading, layout: "not recognised", ...rest, questions: decided?.questions ?? [] };
}

/** Names replaced where the coach has answered; tables without athletes stay as they are. */
function named<Row>(reading: Reading<Row>, answers: NameAnswers): Reading<Row> {
  if (answers.same.length === 0) return reading;
  const records = reading.records as readonly (Row & { readonly athlete: string })[];
  return typeof records[0]?.athlete === "string"
    ? { ...reading, records: withNames(records, answers) }
    : reading;
}

function viewOf(
  table: TableName,
  cells: Cells,
  end: number,
  found: FoundHeader,
  header: {
    readonly fields: Readonly<Record<string, Column>>;
    readonly repColumns: readonly Column[];
  },
  year: number | null,
  log: IssueLog,
): TableView {
  const carried = carriedColumns(cells, found.first, end, header.fields);
  const fields: Record<string, Column> = Object.fromEntries(
    Object.entries(header.fields).map(([field, column]) => [
      field,
      carried.has(field) ? { ...column, carried: true } : column,
    ]),
  );
  const { row: headerRow, first } = found;
  const numbers = fields.setCount;
  if (
    table === "Sets" &&
    fields.set === undefined &&
    numbers !== undefined &&
    !countsSets(cells, numbers.index, first, end)
  ) {
    fields.set = numbers;
    delete fields.setCount;
  }
  return { table, cells, headerRow, first, end, fields, repColumns: header.repColumns, year, log };
}

/** Units and date orders that the reading could not settle, as questions. */
function questionsOf(
  reading: Reading<unknown>,
  cells: Cells,
  first: number,
  end: number,
): ColumnQuestion[] {
  const asked = new Map<number, ColumnQuestion>();
  for (const { code, column, facts } of reading.issues) {
    const about =
      code === "unit-unsettled" ? "unit" : code === "date-order-unsettled" ? "date order" : null;
    if (about === null || column < 1 || asked.has(column)) continue;
    asked.set(column, {
      column,
      heading: String(facts.heading ?? ""),
      about,
      samples: threeSamples(sampleColumn(cells, first, end, column - 1)),
      guess: null,
      choices: about === "unit" ? String(facts.units).split(" or ") : ["day first", "month first"],
    });
  }
  return [...asked.values()];
}

/** A reading of nothing: every filled row below the header is reported. */
function unread(log: IssueLog, cells: Cells, headerRow: number): Reading<never> {
  let rowsBlank = 0;
  let rowsHeading = 0;
  for (let row = 0; row < cells.length; row++)
    if (isBlankLine(cells[row] ?? [])) rowsBlank++;
    else if (row <= headerRow) rowsHeading++;
  const rowsReported = cells.length - rowsBlank - rowsHeading;
  return { records: [], issues: log.issues, rowsRead: 0, rowsReported, rowsBlank, rowsHeading };
}
