import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import type { Cells } from "../../cells";
import { isBlank } from "../../value/blank";
import type { Unit } from "../../value/units";
import { namesSide } from "../across/names-over-figures";
import type { Placed } from "../flat-rows";
import { emitSets } from "../shorthand/emit-sets";
import type { SetGroup } from "../shorthand/scheme";
import type { SchemeSense } from "../shorthand/scheme-order";
import { problemOf, setCell } from "../shorthand/set-cell";
import type { Unfolded } from "../unfolded";
import type { AthleteRow } from "./athlete-rows";
import { besideDates } from "./beside-dates";
import { ColumnGroups } from "./column-groups";
import type { DayColumn } from "./date-header";
import { columnsOfDay } from "./day-columns";
import type { Block } from "./grid-blocks";
import { repeatedIn } from "./repeated-in-row";
import { weekNotes } from "./week-notes";

/** What a block's titles say of all its cells. */
export type BlockWords = {
  readonly sense: SchemeSense;
  /** What the coach said several speeds are. */
  readonly speeds: "each set" | "each rep" | null;
  /** Nothing says whether one speed is the mean or the fastest repetition. */
  readonly asksSpeed: boolean;
  readonly lift: string | null;
  readonly unit: Unit | null;
};

/** What stands beside sets that a mark repeats. */
const repeated = { speeds: [], note: "" };

/** One athlete's row of a grid of sets. */
export function setsRow(
  cells: Cells,
  into: Unfolded,
  block: Block,
  of: AthleteRow,
  words: BlockWords,
): void {
  const { row, athlete, nameColumn } = of;
  const line = cells[row]!;
  const liftColumn = block.known.get("exercise") ?? -1;
  const exercise: Placed = isBlank(line[liftColumn])
    ? [words.lift ?? "", nameColumn]
    : [line[liftColumn], liftColumn];
  weekNotes(into, block.header, line, of);
  const done = new Map<Day, readonly SetGroup[]>();
  const inColumns = new ColumnGroups();
  const beside = besideDates(into, block, line);
  let left: readonly SetGroup[] | null = null;
  for (const dayColumn of block.header.days) {
    const { column, day, field } = dayColumn;
    const shared = {
      ...beside,
      day: [isoFromDay(day), column] as const,
      athlete: [athlete, nameColumn] as const,
      exercise,
    };
    if (field !== null) {
      inColumns.add(dayColumn);
      continue;
    }
    const said = setCell(line[column], words.sense);
    if (said.is === "none") {
      into.note(row, column, athlete, day, "day", said.note);
      continue;
    }
    const groups: readonly SetGroup[] | null =
      said.is === "sets" ? said.groups : repeatedIn(said, left, done, day);
    if (groups === null) {
      into.report(problemOf(said), row, column);
      continue;
    }
    left = groups;
    done.set(day, groups);
    const { speeds, note } = said.is === "sets" ? said : repeated;
    if (words.asksSpeed && speeds.length === 1) into.ask("set speed", line[column]);
    const place = {
      row,
      schemeColumn: column,
      speedColumn: column,
      shared,
      note: [note, column] as const,
      unit: words.unit,
    };
    emitSets(into, place, groups, speeds, words.speeds);
  }
  const before = new Map<string, unknown>();
  for (const columns of inColumns.groups) {
    const [{ day, column, exercise: own }] = columns as [DayColumn];
    const owner = {
      day,
      athlete,
      nameColumn,
      exercise: liftOf(own, column, exercise),
      beside,
      ...words,
    };
    columnsOfDay(into, line, row, owner, columns, before);
  }
}

/** The lift of columns under a date: their own, or the row's, of which they may name the side. */
function liftOf(own: string | undefined, column: number, row: Placed): Placed {
  if (own === undefined) return row;
  return [namesSide(own) ? `${row[0]} ${own}` : own, column];
}
