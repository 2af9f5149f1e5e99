import { cellAddress } from "../../rows/value/cell-address";
import { deletedIn } from "./deleted-in";
import { newLine, standingLine } from "./merge-line";
import { lineName, type PlannedLine, type WeekColumn } from "./plan-lines";
import { type CellToWrite, coachCells, wholeRow } from "./row-of-week";
import type { WeekTab } from "./week-tab";
import type { WrittenBefore } from "./written-before";

/** What writing a week would do to the tab. Nothing of the coach's is among the cells. */
export type WeekMerge = {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly removed: readonly string[];
  /** Planned lines the coach has deleted in the tab: they stay deleted until they are asked for. */
  readonly deleted: readonly PlannedLine[];
  readonly same: readonly string[];
  /** Addresses of the coach's own cells that differ from the plan and stay. */
  readonly kept: readonly string[];
  /** Of these the ones in a planned line, with whose line it is and in which column they stand. */
  readonly own: readonly {
    readonly athlete: string;
    readonly column: WeekColumn;
    readonly cell: string;
  }[];
  readonly cells: readonly CellToWrite[];
  /** Cells of ours that hold already what is planned. */
  readonly standing: readonly CellToWrite[];
  /** What will be ours in each line once the cells are written. */
  readonly written: WrittenBefore;
};

/**
 * Compares a plan with the tab, line by line and cell by cell. A cell is replaced only while it still
 * holds what was written there before; lines never move; new ones go below the last row with anything
 * in it; a line no longer planned is cleared only when nothing in its row is the coach's; one that the
 * coach has deleted is not written again unless that is asked for.
 *
 * @param inScope says of a line's name whether this writing is about it
 * @param again lines deleted in the tab are written, too
 */
export function mergeWeek(given: {
  readonly tab: WeekTab;
  readonly before: WrittenBefore;
  readonly monday: string;
  readonly lines: readonly PlannedLine[];
  readonly inScope: (name: string) => boolean;
  readonly again: boolean;
}): WeekMerge {
  const { tab, before, inScope } = given;
  const isDeleted = deletedIn(tab, before);
  const lines = given.lines.map((line) => ({
    line,
    name: lineName(given.monday, line.athlete, line.session),
  }));
  const planned = new Set(namesOf(lines));
  const staysDeleted = (name: string) => isDeleted(name) && !given.again;
  const merged = mergedLines(
    tab,
    before,
    lines.filter(({ name }) => !staysDeleted(name)),
  );
  const unplanned = [...tab.rowOf]
    .filter(([name]) => inScope(name) && !planned.has(name))
    .map(([name, row]) => ({ name, row, coachs: coachCells(tab, before[name], row) }));
  const removed = unplanned.filter(({ coachs }) => coachs.length === 0);
  const isRemoved = new Set(namesOf(removed));
  const own = merged.flatMap(({ line: { athlete }, row, merge }) =>
    merge.own.map((column) => ({ athlete, column, cell: cellAddress(row, tab.columnOf[column]) })),
  );
  const ours = new Map(merged.map(({ name, merge }) => [name, merge.written]));
  const remembered = [
    ...planned,
    ...Object.keys(before).filter((name) => !inScope(name) && isDeleted(name)),
    ...[...tab.rowOf.keys()].filter((name) => !isRemoved.has(name)),
  ];
  const standing = merged.filter(({ isNew }) => !isNew);
  return {
    added: namesOf(merged.filter(({ isNew }) => isNew)),
    changed: namesOf(standing.filter(({ merge }) => merge.cells.length > 0)),
    same: namesOf(standing.filter(({ merge }) => merge.cells.length === 0)),
    removed: namesOf(removed),
    deleted: lines.filter(({ name }) => staysDeleted(name)).map(({ line }) => line),
    kept: [...own.map(({ cell }) => cell), ...unplanned.flatMap(({ coachs }) => coachs)],
    own,
    cells: [
      ...merged.flatMap(({ merge }) => merge.cells),
      ...removed.flatMap(({ row }) => wholeRow(tab, row, () => "")),
    ],
    standing: merged.flatMap(({ merge }) => merge.standing),
    written: Object.fromEntries(
      remembered.flatMap((name) => {
        const columns = ours.get(name) ?? before[name];
        return columns ? [[name, columns]] : [];
      }),
    ),
  };
}

/** Each line in the row it stands in; new ones from the first free row on. */
function mergedLines(
  tab: WeekTab,
  before: WrittenBefore,
  lines: readonly { readonly line: PlannedLine; readonly name: string }[],
) {
  let { freeRow } = tab;
  return lines.map(({ line, name }) => {
    const standing = tab.rowOf.get(name);
    const isNew = standing === undefined;
    const place = { tab, line, name, row: standing ?? freeRow++ };
    return { ...place, isNew, merge: isNew ? newLine(place) : standingLine(place, before) };
  });
}

const namesOf = (lines: readonly { readonly name: string }[]) => lines.map(({ name }) => name);
