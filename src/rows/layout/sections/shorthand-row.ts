import type { Column } from "../../header/column";
import { emitSets } from "../shorthand/emit-sets";
import { withFiguresBeside } from "../shorthand/figures-beside";
import { orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import {
  noSpeeds,
  ownSpeeds,
  type SpeedsBeside,
  speedsIn,
  tellSpeeds,
} from "../shorthand/speeds-beside";
import { figuresFor, type SpeedsSaid } from "../shorthand/spread-speeds";
import type { Placed } from "../unfolded";
import { withWords } from "../with-words";
import type { Walk } from "./above";

/** Sets in shorthand in the scheme or load column; false when the row holds none. */
export function shorthandRow(
  { above, into, tab }: Walk,
  line: readonly unknown[],
  row: number,
  shared: Readonly<Record<string, Placed | undefined>>,
  load: Placed,
): boolean {
  const { scheme } = above.columns;
  const sense = schemeSense(orderFromWords(scheme?.heading), tab.setsFirst);
  const said = setCell(scheme === undefined ? load[0] : line[scheme.index], sense);
  const column = scheme?.index ?? load[1];
  if (said.is === "order-unsettled") {
    into.report("scheme-order-unsettled", row, column);
    return true;
  }
  if (said.is !== "sets" || said.groups[0]!.reps === null) return false;
  const { note: noted, scheme: _, ...rest } = shared;
  const note = withWords(noted, said.note, column);
  const beside = speedsBeside(above, line);
  const own = ownSpeeds(into, row, said.speeds, beside);
  const speedColumn = own === null ? beside.column : column;
  const { shorthandSets } = above;
  const agreed = withFiguresBeside(into, row, column, said.groups, rest);
  const place = {
    row,
    schemeColumn: column,
    speedColumn,
    shared: agreed.shared,
    note,
    shorthandSets,
  };
  // Of a doubtful bar the load is not known, however it is written.
  const groups = above.barDoubtful
    ? agreed.groups.map((group) => ({ ...group, load: null }))
    : agreed.groups;
  const meant = own === null ? beside.said : null;
  emitSets(into, place, groups, own ?? beside.speeds, meant ?? tab.speeds ?? null);
  above.shorthandSets += groups.reduce((sum, { sets }) => sum + sets, 0);
  const heading = above.columns.speed?.heading ?? "";
  for (const { at, list } of beside.cells) tellSpeeds(into, row, at, heading, list);
  return true;
}

/** Speeds beside shorthand, the column they begin in, and each of their cells. */
type CellsBeside = {
  readonly speeds: readonly (number | null)[];
  readonly column: number;
  readonly said: SpeedsSaid;
  readonly cells: readonly { readonly at: number; readonly list: SpeedsBeside }[];
};

/** Speeds in a column of their own beside shorthand, or one repetition a column. */
function speedsBeside(
  { columns: { speed }, reps }: Walk["above"],
  line: readonly unknown[],
): CellsBeside {
  const cellsOf = (columns: readonly Column[]) =>
    columns.map(({ index }) => ({ at: index, list: speedsIn(line[index]) }));
  const stands = ({ list }: { readonly list: SpeedsBeside }) => list !== noSpeeds;
  const together = cellsOf(speed === undefined ? [] : [speed]).filter(stands);
  const cells = together.length > 0 ? together : cellsOf(reps);
  while (cells.length > 0 && !stands(cells[cells.length - 1]!)) cells.pop();
  return {
    // A repetition left out keeps its place.
    speeds: cells.flatMap(({ list }) => (list.speeds.length > 0 ? list.speeds : [null])),
    column: cells[0]?.at ?? -1,
    said: together.length > 0 ? figuresFor(speed!.words) : null,
    cells,
  };
}
