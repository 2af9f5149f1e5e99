import type { Cells } from "../cells";
import { massUnitOf } from "../header/answered-mass-unit";
import { withAnswers } from "../header/column-answers";
import { type DecidedColumns, decideColumns } from "../header/decide-columns";
import { type FoundHeader, findHeader, missingOf } from "../header/find-header";
import { IssueLog } from "../issue-log";
import { type ChosenLayout, chooseLayout } from "../layout/choose-layout";
import type { LayoutContext } from "../layout/layout-context";
import { noTabAnswers } from "../layout/tab-answers";
import { constantsOf } from "../layout/tab-constants";
import { titleYear } from "../layout/title-year";
import { weekdayYear } from "../layout/weekday-year";
import { withConstants } from "../table/constant-columns";
import { endOfRows } from "../table/trim-padding";
import { viewOf } from "../table/view-of";
import type { TableName } from "../table-name";
import type { TableView } from "../table-view";
import type { ReadOptions } from "./read-options";

/** How a table lies in a range, before a row of it is read. */
export type LieOfRange = {
  readonly context: LayoutContext;
  readonly found: FoundHeader | null;
  readonly decided: DecidedColumns | null;
  /** The rows under the header; null when there is no header. */
  readonly view: TableView | null;
  /** Fields the table cannot do without and no column names. */
  readonly missing: readonly string[];
  readonly layout: ChosenLayout;
  /** Year of dates written without one; null when nothing says it. */
  readonly year: number | null;
  readonly log: IssueLog;
};

type Seen = Pick<LieOfRange, "view" | "missing" | "layout">;

/** Finds the header, decides what each column is, and how the rows lie. */
export function lieOfRange(table: TableName, cells: Cells, options: ReadOptions): LieOfRange {
  const answers = options.answers ?? null;
  const context = contextOf(table, cells, options);
  const { end } = context;
  const saidRow = answers?.headerRow === undefined ? null : answers.headerRow - 1;
  const found = findHeader(table, cells, end, saidRow);
  const log = new IssueLog(table);
  const titled = titleYear(context);
  if (found === null) {
    const missing = missingOf(table, {});
    const layout = chooseLayout(context, null, missing, []);
    return { context, found, decided: null, view: null, missing, layout, year: titled, log };
  }
  const columns = withAnswers(found, answers, found.line);
  const decided = decideColumns(table, cells, found.first, end, columns, found.line, answers);
  const dayAt = decided.header.fields.day?.index;
  const year =
    titled ??
    (dayAt === undefined ? null : weekdayYear(cells, found.first, end, dayAt, () => context.today));
  const seenWith = (constants: Readonly<Record<string, string>>): Seen => {
    const more = withConstants(cells, found.first, constants, decided.header.fields.athlete);
    const fields = { ...decided.header.fields, ...more.fields };
    const missing = missingOf(table, fields);
    const rows = viewOf(table, more.cells, end, found, { ...decided.header, fields }, year, log);
    const view = { ...rows, today: () => context.today };
    return { view, missing, layout: chooseLayout(context, view, missing, decided.header.unknown) };
  };
  const bare = seenWith({});
  // A layout of its own says more than a name that would hold for every row.
  const constants = bare.layout.unfolded === null ? constantsOf(context, found, bare.missing) : {};
  const seen = Object.keys(constants).length === 0 ? bare : seenWith(constants);
  return { context, found, decided, ...seen, year, log };
}

function contextOf(table: TableName, cells: Cells, options: ReadOptions): LayoutContext {
  const answers = options.answers ?? null;
  return {
    table,
    cells,
    end: endOfRows(cells),
    title: options.title ?? "",
    // Asked for only where a layout needs it: a reading that never did holds for any day.
    get today() {
      return options.today ?? null;
    },
    dateOrder: answers?.columns.find(({ dateOrder }) => dateOrder !== undefined)?.dateOrder ?? null,
    massUnit: massUnitOf(answers),
    leftAlone: (answers?.columns ?? []).flatMap(({ column, field }) =>
      field === null ? [column - 1] : [],
    ),
    tab: options.tab ?? noTabAnswers,
    said: options.said ?? false,
  };
}
