import type { Cells } from "../../cells";
import type { Column } from "../../header/column";
import { recogniseHeader } from "../../header/recognise-header";
import { isBlankLine } from "../../table/read-lines";
import { mayBeName, namesSummary } from "../../table/summary-lines";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import type { DayText } from "../../value/day-text";
import { isDate } from "../../value/is-date";
import { headedGroups } from "../across/headed-groups";
import type { HeadedGroups } from "../across/header-of-groups";
import { liftInWords } from "../lift-in-words";
import { speaksOfWeek } from "../wide/week-header";
import { labelled } from "./above";

/** What one line of a tab of blocks is. */
export type SectionLine =
  | {
      readonly is: "header";
      readonly columns: Readonly<Record<string, Column>>;
      readonly reps: readonly Column[];
      /** Column whose heading is no meaning but the lift itself ("SQUAT"); null when none is. */
      readonly lift: number | null;
      /** Columns of several lifts or sets side by side; null where there are none. */
      readonly across?: HeadedGroups;
      /** The day in its corner, which begins a session; null where none stands there. */
      readonly day: { readonly text: DayText; readonly column: number } | null;
    }
  /** Headings above a header, which say nothing by themselves. */
  | { readonly is: "labels" }
  | {
      readonly is: "day";
      readonly text: DayText;
      readonly column: number;
      /** Its cells that are no headings. */
      readonly line: readonly unknown[];
    }
  | {
      readonly is: "words";
      readonly words: readonly { readonly text: string; readonly column: number }[];
    }
  | { readonly is: "summary" }
  | { readonly is: "data" };

/** What each line of a tab is, the headings over several lifts or sets with the header below them. */
export function linesIn(cells: Cells, end: number): SectionLine[] {
  const lines: SectionLine[] = [];
  for (let row = 0; row < end; row++) {
    const across = headedGroups(cells, row, end);
    if (across === null) {
      lines.push(lineIn(cells[row]!));
      continue;
    }
    const { top, left, shared, known } = across;
    for (let above = top; above < row; above++) {
      const beside = cells[above]!.map((cell, at) =>
        at < left && (!known.has(at) || !isBlank(cells[row]![at]) || dayOfCell(cell) !== null)
          ? cell
          : "",
      );
      lines[above] = isBlankLine(beside) ? { is: "labels" } : lineIn(beside);
    }
    const day = dayAmong(cells[row]!.slice(0, left));
    lines.push({ is: "header", columns: shared, reps: [], lift: null, across, day });
  }
  return lines;
}

/** The first of some cells that is a day. */
function dayAmong(cells: readonly unknown[]) {
  const days = cells.map(dayOfCell);
  const column = days.findIndex((text) => text !== null);
  return column < 0 ? null : { text: days[column]!, column };
}

/** Tells header, day line, lone words and averages from rows of data. */
export function lineIn(line: readonly unknown[]): SectionLine {
  const filled: number[] = [];
  for (let column = 0; column < line.length; column++)
    if (!isBlank(line[column])) filled.push(column);
  const [first = -1] = filled;
  const day = dayOfCell(line[first]);
  const header = headerIn(line, filled, day);
  if (header !== null) return header;
  const wordy = filled.every((column) => typeof line[column] === "string" || isDate(line[column]));
  if (day !== null && filled.length <= 3 && wordy)
    return { is: "day", text: day, column: first, line };
  const [, second = -1] = filled;
  const name = line[second];
  if (filled.length > 1 && filled.every((column) => speaksOfWeek(line[column])))
    return {
      is: "words",
      words: filled.map((column) => ({ text: String(line[column]).trim(), column })),
    };
  if (
    filled.length === 2 &&
    typeof name === "string" &&
    labelled.exec(String(line[first]))?.[1] === ""
  )
    return { is: "words", words: [{ text: name.trim(), column: second }] };
  const named = filled.length === 1 && mayBeName(line[first]);
  if (namesSummary(line[first]) && !named) return { is: "summary" };
  if (
    filled.length === 1 &&
    typeof line[first] === "string" &&
    !/^\s*(s|set)?\s*\d+\s*$/i.test(line[first] as string)
  )
    return { is: "words", words: [{ text: (line[first] as string).trim(), column: first }] };
  return { is: "data" };
}

/**
 * A header names at least two of load, speed, repetitions and their like, or lift and load, in words only;
 * a day may stand before them.
 */
function headerIn(
  line: readonly unknown[],
  filled: readonly number[],
  text: DayText | null,
): SectionLine | null {
  const headings = text === null ? filled : filled.slice(1);
  if (headings.some((column) => typeof line[column] !== "string")) return null;
  const day = text === null ? null : { text, column: filled[0]! };
  const words = line.map((cell, column) => (column === day?.column ? "" : cell));
  const { fields: headed, repColumns, unknown } = recogniseHeader("Sets", words);
  const { scheme, ...others } = headed;
  // Where shorthand is the only place for loads, a bare number there is one.
  const fields =
    scheme !== undefined && headed.load === undefined ? { ...others, load: scheme } : headed;
  const figures = ["load", "scheme", "reps", "speed", "set", "reserve", "effort"].filter(
    (field) => fields[field] !== undefined,
  ).length;
  const liftAndLoad = headed.load !== undefined && headed.exercise !== undefined;
  if (figures + (repColumns.length > 1 || liftAndLoad ? 1 : 0) < 2) return null;
  const first = headings[0]!;
  const loadAt = fields.load?.index ?? 0;
  // Right of the tool or the names only a lift that is known by name is one.
  const named = unknown.includes(first)
    ? first
    : unknown.find((one) => one < loadAt && liftInWords(line[one]));
  const lift = fields.exercise === undefined ? (named ?? null) : null;
  // The column under the lift's name holds the sets' numbers.
  const columns =
    lift !== null && fields.set === undefined
      ? {
          ...fields,
          set: { index: lift, unit: null, heading: String(line[lift]).trim(), words: "set" },
        }
      : fields;
  return { is: "header", columns, reps: repColumns, lift, day };
}
