import { dayOfCell } from "../../value/day-of-cell";
import type { Unfolded } from "../unfolded";

/**
 * The words that stand in the rows from `from` to before `end`, above a header of dates; all of them are
 * marked as headings. Reports `row-unread` for a row of figures.
 */
export function titlesAbove(into: Unfolded, from: number, end: number): string[] {
  const titles: string[] = [];
  for (let row = from; row < end; row++) {
    const line = into.source[row]!;
    into.mark(row, "heading");
    if (holdsFigures(line)) into.report("row-unread", row, 0, {}, true);
    for (const cell of line) if (typeof cell === "string") titles.push(cell);
  }
  return titles;
}

const isYear = (figure: number) => figure >= 1900 && figure <= 2100;

/** Figures beside a day are no title, nor are others, but for a year and weeks that are counted. */
function holdsFigures(line: readonly unknown[]): boolean {
  const figures = line.filter((cell) => typeof cell === "number");
  if (line.some((cell) => dayOfCell(cell))) return figures.length > 0;
  return !figures.every(
    (figure, at) =>
      Number.isInteger(figure) &&
      (figure <= 53 || isYear(figure)) &&
      figure >= (figures[at - 1] ?? figure),
  );
}
