import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import type { Placed } from "../flat-rows";
import { emitSets } from "../shorthand/emit-sets";
import { withFiguresBeside } from "../shorthand/figures-beside";
import { problemOf, setCell } from "../shorthand/set-cell";
import { ownSpeeds, speedsIn, tellSpeeds } from "../shorthand/speeds-beside";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import { filledColumns } from "./column-groups";
import type { DayColumn } from "./date-header";
import type { BlockWords } from "./sets-row";

/** Whose columns they are, of which day. */
export type ColumnsOwner = BlockWords & {
  readonly day: Day;
  readonly athlete: string;
  readonly nameColumn: number;
  readonly exercise: Placed;
  /** What the row says once for all its days. */
  readonly beside: Readonly<Record<string, Placed>>;
};

/**
 * One set's or one shorthand's load, speed and the rest in columns of their own under one date. `before` keeps what stands under
 * the dates to the left, for ditto marks.
 */
export function columnsOfDay(
  into: Unfolded,
  line: readonly unknown[],
  row: number,
  owner: ColumnsOwner,
  columns: readonly DayColumn[],
  before: Map<string, unknown>,
): void {
  const filled = filledColumns(into, line, row, columns, before);
  const [first] = filled;
  if (first === undefined) return;
  const at = new Map(filled.map((column) => [column.field, column]));
  const shared: Record<string, Placed | undefined> = {
    ...owner.beside,
    day: [isoFromDay(owner.day), first.column],
    athlete: [owner.athlete, owner.nameColumn],
    exercise: owner.exercise,
  };
  const speed = at.get("speed");
  const listed = speedsIn(speed?.cell);
  if (owner.asksSpeed && listed.speeds.length === 1) into.ask("set speed", speed!.cell);
  const spelled = at.get("scheme");
  const scheme = spelled ?? at.get("load");
  const said = setCell(scheme?.cell, owner.sense);
  const shorthand = said.is === "sets" && said.groups[0]!.reps !== null;
  if (scheme && said.is === "none" && (spelled || at.size === 1)) {
    into.note(row, scheme.column, owner.athlete, owner.day, "day", said.note);
    return;
  }
  if (said.is === "order-unsettled" || (spelled && !shorthand)) {
    into.log.addAtSource(problemOf(said), row, scheme!.column);
    return;
  }
  for (const filledColumn of filled) {
    // What is written as shorthand is no figure.
    if (shorthand && filledColumn === scheme) continue;
    const { field, column, unit, cell } = filledColumn;
    shared[field] = [withUnit(cell, unit ?? (field === "load" ? owner.unit : null)), column];
  }
  if (scheme === undefined || !shorthand) {
    into.emit(row, shared);
    return;
  }
  const beside = { speeds: listed.speeds, column: speed?.column ?? scheme.column };
  const own = ownSpeeds(into, row, said.speeds, beside);
  const place = {
    row,
    schemeColumn: scheme.column,
    speedColumn: own === null ? beside.column : scheme.column,
    shared,
    note: [said.note, scheme.column] as const,
    unit: scheme.unit ?? owner.unit,
  };
  const agreed = withFiguresBeside(into, row, scheme.column, said.groups, shared);
  emitSets(
    into,
    { ...place, shared: agreed.shared },
    agreed.groups,
    own ?? beside.speeds,
    owner.speeds,
  );
  tellSpeeds(into, row, beside.column, "speed", listed);
}
