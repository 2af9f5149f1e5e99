import type { Cells } from "../cells";
import { headerWords } from "../header/header-words";
import { headingLookup } from "../header/recognise-header";
import { rowsSearched } from "../header/rows-searched";
import { sampleColumn, valueFit } from "../header/value-fit";
import { isBlank } from "../value/blank";
import { dayOfCell } from "../value/day-of-cell";
import { liftInWords, namesJump } from "./lift-in-words";

/** One of several tables side by side: the tab's cells with those of the others left out. */
export type TableBeside = {
  readonly cells: Cells;
  /** Its columns, from 0; `to` is the one after the last. */
  readonly from: number;
  readonly to: number;
};

const found = new WeakMap<Cells, readonly TableBeside[]>();

/**
 * Tables side by side with an empty column between them, each with days or names of its own; none
 * where the tab is one table.
 */
export function tablesBeside(cells: Cells): readonly TableBeside[] {
  const before = found.get(cells);
  if (before !== undefined) return before;
  let parts: readonly TableBeside[] = [];
  for (let row = 0; row < Math.min(cells.length, rowsSearched) && parts.length === 0; row++)
    if (headsTwice(cells[row]!) || hasDatesApart(cells[row]!)) parts = partsFrom(cells, row);
  found.set(cells, parts);
  return parts;
}

/** The same heading of days or names twice in one row. */
function headsTwice(line: readonly unknown[]): boolean {
  const keys = line.filter(isKey).map((cell) => headerWords(cell).words);
  return new Set(keys).size < keys.length;
}

/** Dates with a blank between them, as two grids have, of two dates or more each. */
function hasDatesApart(line: readonly unknown[]): boolean {
  const dated = [...line.keys()].filter((at) => dayOfCell(line[at]) !== null);
  const [first, last] = [dated[0] ?? 0, dated[dated.length - 1] ?? 0];
  return dated.length > 3 && line.slice(first, last).some(isBlank);
}

function isKey(cell: unknown): boolean {
  const field = headingLookup("Sets").get(headerWords(cell).words);
  return field === "day" || field === "athlete";
}

function partsFrom(cells: Cells, row: number): TableBeside[] {
  const head = cells[row]!;
  const width = Math.max(...cells.map((line) => line.length));
  const empty = (column: number) => {
    for (let at = row; at < cells.length; at++) if (!isBlank(cells[at]![column])) return false;
    return true;
  };
  const starts: number[] = [];
  for (let column = 0, free = true; column < width; column++) {
    if (isBlank(head[column]) && empty(column)) free = true;
    else {
      if (free) starts.push(column);
      free = false;
    }
  }
  // Days and names once more, with more than keys behind them, begin a table without an empty column before
  // it; a day or a name alone is a column typed twice.
  const keys = [...head.keys()].filter((column) => isKey(head[column]));
  const words = keys.map((column) => headerWords(head[column]).words);
  const turn = words.indexOf(words[0]!, 1);
  const again =
    turn > 1 && keys.length % turn === 0 && words.every((word, at) => word === words[at % turn]);
  for (let at = turn; again && at < keys.length; at += turn) {
    const [before, column] = [keys[at - 1]!, keys[at]!];
    const more = head.slice(column).some((cell) => !isBlank(cell) && !isKey(cell));
    if (more && !starts.some((start) => start > before && start <= column)) starts.push(column);
  }
  starts.sort((one, other) => one - other);
  const ofNames = (column: number) => {
    const sample = sampleColumn(cells, row + 1, cells.length, column);
    return sample.length > 0 && valueFit("athlete", sample) >= 0.8;
  };
  const whole = starts.filter((from, at) => {
    const part = head.slice(from, starts[at + 1] ?? width);
    // A grid's names may stand under a lift, or under nothing.
    const dated = part.some((cell) => dayOfCell(cell) !== null);
    return part.some(isKey) || (dated && dayOfCell(head[from]) === null && ofNames(from));
  });
  if (whole.length < 2) return [];
  const bounds = whole.map((from, at) => ({
    from: at === 0 ? 0 : from,
    to: whole[at + 1] ?? width,
  }));
  return bounds.map(({ from, to }) => ({
    from,
    to,
    cells: cells.map((line, at) => {
      const keep = holdsForAll(line, at < row) ? bounds[0]!.to : 0;
      return line.map((cell, column) =>
        (column >= from && column < to) || column < keep ? cell : "",
      );
    }),
  }));
}

/** A day, a place or a name alone at the left stands for every table; a lift's or a test's title does not. */
function holdsForAll(line: readonly unknown[], above: boolean): boolean {
  const filled = [...line.entries()].filter(([, cell]) => !isBlank(cell));
  const [only] = filled;
  if (only === undefined || filled.length > 1) return false;
  return (
    dayOfCell(only[1]) !== null || (above && liftInWords(only[1]) === null && !namesJump(only[1]))
  );
}
