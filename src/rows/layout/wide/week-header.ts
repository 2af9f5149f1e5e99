import type { Cells } from "../../cells";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import { type DayText, weekdayOfWord } from "../../value/day-text";
import type { LayoutContext } from "../layout-context";

type HeaderWeekday = { row: number; column: number; weekday: number };

/** A date in a header, with the weekdays named below it when it starts a week. */
export type HeaderDate = {
  row: number;
  column: number;
  text: DayText;
  weekdays: readonly HeaderWeekday[];
};

/**
 * Week labels in one row ("Wk 5 (4/5)"), weekdays below or beside them; null when it is not that. The
 * Sunday before a Monday begins the week: its weekday is −1, a day before that Monday.
 */
export function weekHeader({ cells }: LayoutContext, row: number): HeaderDate[] | null {
  return labelled(cells, row, row + 1, 2) ?? labelled(cells, row, row, 3);
}

function labelled(cells: Cells, row: number, at: number, least: number): HeaderDate[] | null {
  const line = cells[row]!;
  const named = cells[at] ?? [];
  const weeks: HeaderDate[] = [];
  let weekdays: HeaderWeekday[] | null = null;
  for (let column = 0; column < Math.max(line.length, named.length); column++) {
    const text = isBlank(line[column]) ? null : weekStart(line[column]);
    if (text !== null) {
      weekdays = [];
      weeks.push({ row, column, text, weekdays });
    }
    const cell = named[column];
    const weekday = typeof cell === "string" ? weekdayOfWord(cell.trim()) : null;
    if (weekday === null || weekdays === null) continue;
    // A week that begins on Sunday has it before its Monday.
    if (weekdays.length === 1 && weekdays[0]!.weekday === 6 && weekday < 6)
      weekdays[0]!.weekday = -1;
    // A weekday before the one to its left begins a week that no label names.
    if (weekday < (weekdays[weekdays.length - 1]?.weekday ?? 0)) weekdays = null;
    else weekdays.push({ row: at, column, weekday });
  }
  const count = weeks.reduce((sum, week) => sum + week.weekdays.length, 0);
  return count >= least ? weeks : null;
}

/** The Monday a week label gives: "w/c 4/5", "Wk 6  (11/5)", "week of 4 May (easy)", or a plain date. */
export function weekStart(cell: unknown): DayText | null {
  const plain = dayOfCell(cell);
  if (plain !== null || typeof cell !== "string") return plain;
  const inside = /\(([^()]*\d[^()]*)\)/.exec(cell);
  if (inside !== null) {
    const text = dayOfCell(inside[1]!);
    if (text !== null) return text;
  }
  const after =
    /^(?:w\/?c|week(?: of| commencing)?|wk|woche(?: vom| ab)?|ab)\.?\s+(?:\d{1,2}\s*[:–-]\s*)?(.+)/i.exec(
      cell.trim(),
    );
  return after === null ? null : dayOfCell(after[1]!.replace(/[*(].*/, ""));
}

const weekly = /^\s*(?:w\/?c|week|wk|woche)(?!\p{L})/iu;

/** "Week 1", "w/c 6 Apr": words that begin with a week. */
export const speaksOfWeek = (cell: unknown): boolean =>
  typeof cell === "string" && cell.length < 60 && weekly.test(cell);
