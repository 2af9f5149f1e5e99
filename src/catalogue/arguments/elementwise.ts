import { accept, type Outcome, refuse } from "../../outcome";
import { headerWords } from "../../rows/header/header-words";
import { onlyHeadings } from "../../rows/header/only-headings";
import { refusalSentence } from "../../words/refusals";
import { thrown } from "./thrown";

/** One argument as rows of cells: a single cell is one row of one. Rows given as rows stay the same list. */
export function rowsOf(argument: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(argument)) return [[argument]];
  if (argument.every(Array.isArray)) return argument;
  return argument.map((row: unknown) => (Array.isArray(row) ? row : [row]));
}

export const isBlank = (cell: unknown): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/** One argument of a formula that works row by row. */
export type ColumnArgument = {
  readonly name: string;
  readonly cells: unknown;
  /** A row with all such cells blank is no row: it stays empty. */
  readonly needed?: boolean;
  /** Takes the whole row of cells, not one column. */
  readonly wide?: boolean;
  /** Bare numbers under a heading that names a unit, "Height (in)", are handed on with it: "14 in". */
  readonly inUnit?: boolean;
};

/**
 * A formula worked row by row over columns given side by side; a single cell counts for every row.
 * One row without a figure throws its sentence; among several it stands in that row. A row whose
 * needed cells are all blank, those given once for all rows aside, stays empty, and so does a first row
 * of headings; blank rows at the end are left off.
 *
 * @param figure gets one cell for each argument (a row of cells for a wide one)
 */
export function elementwise(
  columns: readonly ColumnArgument[],
  figure: (...cells: readonly unknown[]) => Outcome<unknown>,
): unknown {
  const lists = columns.map((column) => ({ ...column, rows: rowsOf(column.cells) }));
  const tallest = lists.reduce((a, b) => (b.rows.length > a.rows.length ? b : a));
  const height = tallest.rows.length;
  for (const { name, rows, wide } of lists) {
    if (rows.length !== 1 && rows.length !== height) {
      const facts = { name, rows: rows.length, other: tallest.name, otherRows: height };
      thrown(refuse("columns-differ", facts));
    }
    if (!wide && rows.some((row) => row.length > 1)) thrown(refuse("column-too-wide", { name }));
  }
  const cellsOf = (at: number) =>
    lists.map(({ rows, wide, inUnit }) => {
      const row = rows[rows.length === 1 ? 0 : at]!;
      if (wide) return row;
      return inUnit ? withUnit(row[0] ?? "", rows[0]![0]) : (row[0] ?? "");
    });
  // A value given once for all rows makes none of them: columns do, where any needed one is given.
  const needed = lists.filter((list) => list.needed);
  const tall = needed.filter(({ rows }) => rows.length > 1);
  const making = tall.length > 0 ? tall : needed;
  const empty = (at: number) =>
    making.every(({ rows }) => rows[rows.length === 1 ? 0 : at]!.every(isBlank));
  const headed = () => onlyHeadings(lists.flatMap(({ rows }) => (rows.length > 1 ? rows[0]! : [])));
  if (height === 1) {
    const only = thrown(figure(...cellsOf(0)));
    return Array.isArray(only) ? [only] : only;
  }
  let end = height;
  while (end > 0 && empty(end - 1)) end--;
  if (end === 0) thrown(refuse("argument-blank", { name: lists[0]!.name }));
  let width = 1;
  const answers: unknown[] = [];
  const refused = new Set<number>();
  for (let at = 0; at < end; at++) {
    const found = empty(at) ? blank : figure(...cellsOf(at));
    const outcome = at === 0 && !found.ok && headed() ? blank : found;
    const answer = outcome.ok ? outcome.value : refusalSentence(outcome.refusal);
    if (!outcome.ok) refused.add(at);
    if (Array.isArray(answer) && answer.length > width) width = answer.length;
    answers.push(answer);
  }
  if (width === 1) return answers.map((answer) => (Array.isArray(answer) ? answer : [answer]));
  return answers.map((answer, at) => {
    if (Array.isArray(answer)) return answer;
    return [answer, ...Array<string>(width - 1).fill(refused.has(at) ? "–" : "")];
  });
}

/** A bare number with the unit that a heading above it names. */
export function withUnit(cell: unknown, heading: unknown): unknown {
  if (typeof cell !== "number" || typeof heading !== "string" || /\d/.test(heading)) return cell;
  const { unit } = headerWords(heading);
  return unit ? `${cell} ${unit.name}` : cell;
}

const blank = accept("");
