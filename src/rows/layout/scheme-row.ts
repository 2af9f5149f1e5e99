import { type Day, isoFromDay } from "../../coaching/calendar/day";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import type { Placed } from "./flat-rows";
import { wordsOfCells } from "./with-words";

const carried = [
  "minute",
  "athlete",
  "exercise",
  "kind",
  "speedIs",
  "tool",
  "bar",
  "gym",
  "movedWell",
  "reserve",
  "effort",
  "by",
  "done",
];

/** One row of a log of shorthand, with its cells by meaning. */
export type SchemeRow = {
  readonly row: number;
  readonly line: readonly unknown[];
  readonly day: Day | null;
  readonly athlete: string;
  readonly exercise: unknown;
  /** Column of the shorthand. */
  readonly scheme: number;
  /** Fields that every set of the row shares. */
  readonly shared: Readonly<Record<string, Placed | undefined>>;
  readonly note: Placed | undefined;
  readonly noteWords: string;
  /** What stands beside the shorthand in other columns, for a row of no sets. */
  readonly others: () => string;
};

const withoutFigures = ["day", "minute", "athlete", "exercise", "note"];

export function schemeRow(
  { fields, repColumns }: TableView,
  line: readonly unknown[],
  row: number,
  scheme: number,
  day: Day | null,
  athlete: string,
): SchemeRow {
  const placed = (field: string): Placed | undefined => {
    const column = fields[field];
    return column === undefined ? undefined : [line[column.index], column.index];
  };
  const shared: Record<string, Placed | undefined> = {
    day: day === null ? placed("day") : [isoFromDay(day), fields.day!.index],
  };
  for (const field of carried) shared[field] = placed(field);
  // Carried-down names are not in the row's own cell.
  shared.athlete = [athlete, fields.athlete!.index];
  if (fields.scheme !== undefined) shared.load = placed("load");
  const note = placed("note");
  const noted = note !== undefined && !isBlank(note[0]);
  return {
    row,
    line,
    day,
    athlete,
    exercise: line[fields.exercise!.index],
    scheme,
    shared,
    note: noted ? note : undefined,
    noteWords: noted ? String(note[0]).trim() : "",
    others: () => {
      const left = Object.keys(fields).filter((field) => !withoutFigures.includes(field));
      const columns = [...repColumns, ...left.map((field) => fields[field]!)];
      return wordsOfCells(
        line,
        columns.filter(({ index }) => index !== scheme),
      );
    },
  };
}
