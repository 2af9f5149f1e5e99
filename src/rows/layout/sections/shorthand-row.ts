import type { Column } from "../../header/column";
import { plainWords } from "../../header/header-words";
import { setKinds } from "../../table/set-kinds";
import { countedGroups } from "../counted-groups";
import type { Placed } from "../flat-rows";
import { emitSets } from "../shorthand/emit-sets";
import { withFiguresBeside } from "../shorthand/figures-beside";
import { orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { isShorthand, type SetGroup, setCell } from "../shorthand/set-cell";
import {
  noSpeeds,
  ownSpeeds,
  type SpeedsBeside,
  speedsIn,
  tellSpeeds,
} from "../shorthand/speeds-beside";
import { figuresFor, type SpeedsSaid } from "../shorthand/spread-speeds";
import { withWords } from "../with-words";
import { keyOf, type Walk } from "./above";

const uncounted: SetGroup = { load: null, unit: null, reps: null, sets: 1 };

/** Sets in shorthand in the scheme or load column, or counted in one of their own; false for a row of one set. */
export function shorthandRow(
  { above, into, tab }: Walk,
  line: readonly unknown[],
  row: number,
  shared: Readonly<Record<string, Placed | undefined>>,
  load: Placed,
): boolean {
  const { scheme, setCount } = above.columns;
  const { index: column, heading: order } = scheme ?? above.columns.load!;
  const sense = schemeSense(orderFromWords(order), tab.setsFirst);
  const said = setCell(scheme === undefined ? load[0] : line[column], sense);
  if (said.is === "order-unsettled") {
    into.report("scheme-order-unsettled", row, column);
    return true;
  }
  const written = said.is === "sets" && isShorthand(said) ? said : null;
  // The load stands beside it, so the row counts.
  if (written === null && scheme !== undefined && said.is !== "none")
    into.log.addAtSource("scheme-unread", row, column);
  const counted = countedGroups(
    { fields: { setCount } },
    into,
    { row, line, scheme: column },
    written?.groups ?? [uncounted],
  );
  if (written === null && counted[0]!.sets === 1) return false;
  const { note: noted, scheme: _, ...rest } = shared;
  const note = withWords(noted, written?.note ?? "", column);
  const beside = speedsBeside(above, line);
  const own = ownSpeeds(into, row, written?.speeds ?? [], beside);
  const speedColumn = own === null ? beside.column : column;
  const of = keyOf(above);
  const shorthandSets = above.shorthandSets.get(of) ?? 0;
  // A warm-up or a marker has its label for a number.
  const kind = setKinds.get(plainWords(rest.set?.[0])) ?? "work";
  const agreed = withFiguresBeside(into, row, column, counted, rest);
  const place = {
    row,
    schemeColumn: column,
    speedColumn,
    shared: agreed.shared,
    note,
    shorthandSets,
    label: kind === "work" ? undefined : rest.set,
  };
  // Of a doubtful bar the load is not known, however it is written.
  const groups = above.barDoubtful
    ? agreed.groups.map((group) => ({ ...group, load: null }))
    : agreed.groups;
  const meant = own === null ? beside.said : null;
  emitSets(into, place, groups, own ?? beside.speeds, meant ?? tab.speeds ?? null);
  if (kind === "work")
    above.shorthandSets.set(
      of,
      groups.reduce((sum, { sets }) => sum + sets, shorthandSets),
    );
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
