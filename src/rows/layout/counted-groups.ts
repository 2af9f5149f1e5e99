import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { saysNoValue } from "../value/no-value";
import type { SchemeRow } from "./scheme-row";
import type { SetGroup } from "./shorthand/set-cell";
import type { Unfolded } from "./unfolded";

const mostSets = 12;

/** A column "Sets" says how often the row's load was done, a column of repetitions how many in each. */
export function countedGroups(
  view: TableView,
  into: Unfolded,
  read: SchemeRow,
  groups: readonly SetGroup[],
): readonly SetGroup[] {
  const { reps } = view.fields;
  const [group] = groups;
  const sets = setsOf(view, into, read);
  if (group === undefined || (sets === null && group.reps !== null)) return groups;
  const done = reps === undefined ? Number.NaN : Number(read.line[reps.index]);
  const each = Number.isInteger(done) && done > 0 ? done : group.reps;
  return [{ ...group, sets: sets ?? group.sets, reps: each }];
}

/** How many sets the row's own cell counts; null where it counts none, reported where it should. */
function setsOf({ fields }: TableView, { log }: Unfolded, { row, line }: SchemeRow): number | null {
  if (fields.setCount === undefined) return null;
  const { index, heading } = fields.setCount;
  const cell = line[index];
  if (isBlank(cell) || saysNoValue(String(cell))) return null;
  const sets = Number(cell);
  if (Number.isInteger(sets) && sets >= 1 && sets <= mostSets) return sets;
  const bounds = { low: 1, high: mostSets, unit: "", heading };
  if (Number.isNaN(sets)) log.addAtSource("not-a-number", row, index, { heading });
  else log.addAtSource("implausible", row, index, bounds);
  return null;
}
