import type { Cells } from "../../cells";
import type { Column } from "../../header/column";
import { numbersAlone, speedsUnderNumbers } from "../../header/one-set-a-row";
import type { Placed } from "../flat-rows";
import type { SpeedsSaid } from "../shorthand/spread-speeds";
import { dateColumn, nameColumn } from "./columns-of-rows";
import { figuresOfSets } from "./figures-of-sets";
import type { HeadedGroups } from "./header-of-groups";
import { type HeadingParts, headingParts } from "./heading-parts";
import { isCounted, labelsOver } from "./labels-over";
import { type Group, sortedColumns } from "./sorted-columns";

const ofJumps = /^(?:test|jump|jump test|kind of jump|sprung|sprungtest)$/;

const ofOneSet = /^(?:speed|reserve|effort|scheme|rep \d+)$/;

type Place = {
  readonly row: number;
  readonly top: number;
  readonly left: number;
  readonly end: number;
};

/** Columns by the lift or the set their headings name; null where there are not two such groups. */
export function groupsUnder(
  cells: Cells,
  { row, top, left, end }: Place,
  headings: readonly HeadingParts[],
): HeadedGroups | null {
  // A column of tests or jumps: what stands in sets is no load.
  if (headings.some(({ column }) => ofJumps.test(column.words))) return null;
  const labelled = labelsOver(headings, left);
  if (labelled === null) return null;
  const { all, lifts, labels } = labelled;
  const bare = figuresOfSets(cells, row + 1, end, all.filter(isCounted));
  const speedsAre = bare === "speed" ? speedsOver(cells, { row, top, end }, all) : "each set";
  if (speedsAre === "each rep") return null;
  const fieldOf = (one: HeadingParts) => one.field ?? (isCounted(one) ? bare : null);
  const { shared, known, groups } = sortedColumns({ all, labels, left, fieldOf });
  if (!areSets(groups, shared)) return null;
  // One speed beside several sets is of none of them; a load is, unless each has its own.
  for (const [field, { index }] of Object.entries(shared))
    if (ofOneSet.test(field) || (field === "load" && groups.some(hasLoad))) {
      known.delete(index);
      delete shared[field];
    }
  const below = { first: row + 1, end, left };
  dateColumn(cells, below, shared, known);
  nameColumn(cells, below, shared, (lifts?.size ?? 0) > 0, known);
  // Names down the rows: what stands across is something else.
  if (lifts === null && shared.athlete !== undefined) return null;
  return {
    top,
    left,
    shared,
    known,
    isOpen: speedsAre === null,
    groups: groups.map(({ of, columns, reps }) => {
      const label: Placed | null = of.label === "" ? null : [of.label, of.column.index];
      return {
        columns: columns.scheme && !columns.load ? { ...columns, load: columns.scheme } : columns,
        reps,
        exercise: lifts === null ? null : label,
        athlete: lifts === null ? label : null,
        set: of.set === "" ? null : [of.set, of.column.index],
      };
    }),
  };
}

/** What numbers alone over the speeds count; null where it is open, and no word above them says sets. */
function speedsOver(
  cells: Cells,
  { row, top, end }: Omit<Place, "left">,
  headings: readonly HeadingParts[],
): SpeedsSaid {
  const alone = numbersAlone(cells[row]!);
  const saysSets = (line: readonly unknown[]) =>
    line.some((cell, at) => headingParts(cell, at).field === "setCount");
  if (alone.length === 0 || cells.slice(top, row).some(saysSets)) return "each set";
  const named = Object.fromEntries(headings.map(({ field, column }) => [field, column]));
  return speedsUnderNumbers(cells, { first: row + 1 }, end, named, alone);
}

const hasLoad = ({ columns }: Group) => (columns.load ?? columns.scheme) !== undefined;

/** Whether groups of columns are sets: two of them or more figures of one, with a load somewhere. */
function areSets(groups: readonly Group[], shared: Readonly<Record<string, Column>>): boolean {
  // Sets are counted from the first: "bar 15" above a column is none.
  const numbers = groups.flatMap(({ of }) => (/^\d+$/.test(of.set) ? [of.set] : []));
  if (numbers.length > 0 && !numbers.includes("1")) return false;
  // A figure alone under a name may be a column of any table.
  const enough = groups.length > 1 || groups.some(({ columns }) => Object.keys(columns).length > 1);
  return enough && (groups.some(hasLoad) || shared.load !== undefined);
}
