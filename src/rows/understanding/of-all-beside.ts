import type { Cells } from "../cells";
import { neededFields } from "../header/columns";
import { findHeader } from "../header/find-header";
import type { TableBeside } from "../layout/tables-beside";
import type { Understanding } from "../read-table";
import { isBlankLine } from "../table/read-lines";
import { endOfRows } from "../table/trim-padding";
import type { TableName } from "../table-name";
import type { ReadOptions } from "./read-options";

/** Those of several tables side by side that are this table: with all it needs, or else the nearest. */
export function besideOf(table: TableName, all: readonly TableBeside[]): readonly TableBeside[] {
  const weighed = all.map((part) => {
    const header = findHeader(table, part.cells, endOfRows(part.cells));
    const known =
      header === null ? 0 : Object.keys(header.fields).length + header.repColumns.length;
    const lacking = header?.missing.length ?? neededFields[table].length;
    return { part, known, lacking };
  });
  const least = Math.min(...weighed.map(({ lacking }) => lacking));
  const near = weighed.filter(({ lacking }) => lacking === least);
  const most = Math.max(...near.map(({ known }) => known));
  return near.filter(({ known }) => 2 * known >= most).map(({ part }) => part);
}

/** What the coach said of the columns of one of them. */
export function optionsOf<Options extends ReadOptions>(
  { from, to }: TableBeside,
  options: Options,
): Options {
  const { answers } = options;
  if (answers === undefined) return options;
  const columns = answers.columns.filter(({ column }) => column > from && column <= to);
  return { ...options, answers: { ...answers, columns } };
}

/** Several readings of one table put together; each row of the range counts once. */
export function together<T extends TableName>(
  cells: Cells,
  all: readonly Understanding<T>[],
): Understanding<T> {
  const [first, ...others] = all as [Understanding<T>, ...Understanding<T>[]];
  if (others.length === 0) return first;
  const readings = all.map(({ reading }) => reading);
  const most = (count: "rowsReported" | "rowsHeading") =>
    Math.max(...readings.map((reading) => reading[count]));
  const rowsBlank = cells.filter(isBlankLine).length;
  const rowsHeading = most("rowsHeading");
  const rowsReported = Math.min(most("rowsReported"), cells.length - rowsBlank - rowsHeading);
  const said = new Set<string>();
  return {
    ...first,
    reading: {
      records: readings.flatMap(({ records }) => records).sort((a, b) => a.row - b.row),
      // That there is no header at all is said once.
      issues: readings.flatMap(({ issues }, at) =>
        at === 0 ? issues : issues.filter(({ code }) => code !== "no-header"),
      ),
      notes: readings.flatMap(({ notes }) => notes ?? []),
      rowsBlank,
      rowsHeading,
      rowsReported,
      rowsRead: cells.length - rowsBlank - rowsHeading - rowsReported,
    },
    // What stands for all of them is a column of the first.
    columns: all
      .flatMap(({ columns }) => columns)
      .filter((one, at, every) => every.findIndex(({ column }) => column === one.column) === at),
    questions: all.flatMap(({ questions }) => questions),
    tabQuestions: all
      .flatMap(({ tabQuestions }) => tabQuestions)
      .filter(({ about, said: written }) => {
        const key = `${about}|${written}`;
        return !said.has(key) && said.add(key);
      }),
  };
}
