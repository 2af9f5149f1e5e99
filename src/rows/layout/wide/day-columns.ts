import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { speedList } from "../../value/speed-list";
import { emitSets } from "../shorthand/emit-sets";
import { type SetCell, setCell } from "../shorthand/set-cell";
import type { Placed, Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { DayColumn } from "./date-header";
import type { BlockWords } from "./sets-row";

/** Whose columns they are, of which day. */
export type ColumnsOwner = BlockWords & {
  readonly day: Day;
  readonly athlete: string;
  readonly nameColumn: number;
  readonly exercise: Placed;
};

/** Load, speed and the rest in columns of their own under one date. */
export function columnsOfDay(
  into: Unfolded,
  line: readonly unknown[],
  row: number,
  owner: ColumnsOwner,
  columns: readonly DayColumn[],
): void {
  const filled = columns.filter(({ column }) => !isBlank(line[column]));
  if (filled.length === 0) return;
  const at = new Map(filled.map((column) => [column.field!, column]));
  const shared: Record<string, Placed | undefined> = {
    day: [isoFromDay(owner.day), filled[0]!.column],
    athlete: [owner.athlete, owner.nameColumn],
    exercise: owner.exercise,
  };
  const figure = at.get("speed");
  if (owner.asksSpeed && figure !== undefined && speedsOf(line[figure.column]).length === 1)
    into.ask("set speed", line[figure.column]);
  const scheme = at.get("scheme") ?? at.get("load");
  const said = scheme === undefined ? null : setCell(line[scheme.column], owner.sense);
  if (scheme !== undefined && said !== null && said.is === "order-unsettled") {
    into.log.addAtSource("scheme-order-unsettled", row, scheme.column);
    return;
  }
  if (scheme !== undefined && said?.is === "sets" && isShorthand(said) && !at.has("reps")) {
    const speedAt = at.get("speed")?.column;
    const speeds =
      said.speeds.length > 0 || speedAt === undefined ? said.speeds : speedsOf(line[speedAt]);
    const speedColumn = speedAt ?? scheme.column;
    const unit = scheme.unit ?? owner.unit;
    const place = { row, schemeColumn: scheme.column, speedColumn, shared, note: undefined, unit };
    emitSets(into, place, said.groups, speeds, owner.speeds);
    return;
  }
  if (said?.is === "none" && at.size === 1) {
    into.note(row, scheme!.column, owner.athlete, owner.day, "day", said.note);
    return;
  }
  for (const [field, { column, unit }] of at)
    shared[field] ??= [
      withUnit(line[column], unit ?? (field === "load" ? owner.unit : null)),
      column,
    ];
  into.emit(row, shared);
}

function isShorthand(said: Extract<SetCell, { is: "sets" }>): boolean {
  return said.groups[0]?.reps !== null;
}

function speedsOf(cell: unknown): readonly (number | null)[] {
  if (typeof cell === "number") return [cell];
  return typeof cell === "string" ? speedList(cell).speeds : [];
}
