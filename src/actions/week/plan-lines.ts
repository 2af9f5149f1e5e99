import { nextWeekHeadings } from "../../words/next-week-tab";
import type { NumberStyle } from "../../words/printed-numbers";
import type { Written } from "../workbook";

/** A column of the `Next week` tab. */
export type WeekColumn = keyof typeof nextWeekHeadings;

/** Column the coach types speeds into: never written, never cleared. */
export const typedColumn = "typed";

/** All columns in the order a new tab gets them. */
export const weekColumns = Object.keys(nextWeekHeadings) as WeekColumn[];

/** Where a column of the tab stands in a row, "C7". */
export type CellOfRow = (column: WeekColumn) => string;

/** Cells written by the plan, in a line of the tab; a formula needs to know where its cells stand. */
export type PlannedCells = Readonly<
  Record<Exclude<WeekColumn, "typed" | "line">, Written | ((cell: CellOfRow) => Written)>
>;

/** One session of one athlete as it is to stand in the tab. */
export type PlannedLine = {
  readonly athlete: string;
  /** Session of the week, from 1. */
  readonly session: number;
  /** "2026-06-30" */
  readonly day: string;
  /** What is written, given the unit of mass the tab's headings name. */
  readonly cells: (unit: NumberStyle["unit"]) => PlannedCells;
};

/** Name of a line in the tab's last column: stays with the row however it is sorted or edited. */
export function lineName(monday: string, athlete: string, session: number): string {
  return `${monday} ${athlete} ${session}`;
}

/** Monday of a line, from its name; null for a text that is no line's name. */
export const mondayOfLine = (name: string): string | null =>
  /^(\d{4}-\d{2}-\d{2}) /.exec(name)?.[1] ?? null;

/** Athlete of a line, from its name. */
export const athleteOfLine = (name: string): string => name.slice(11).replace(/ \d+$/, "");

/**
 * Checked before anything is written, since half a week is worse than none. Throws for two lines of
 * one name and for numbers that are none: both would be our mistake, not the coach's.
 */
export function assertWritable(monday: string, lines: readonly PlannedLine[]): void {
  const names = lines.map(({ athlete, session }) => lineName(monday, athlete, session));
  if (new Set(names).size !== names.length) throw new Error("A line is planned twice.");
  for (const { cells } of lines) {
    for (const cell of Object.values(cells("kg"))) {
      if (typeof cell === "number" && !Number.isFinite(cell))
        throw new Error("A planned number is not one.");
    }
  }
}
