import type { Column } from "../header/column";
import { setBounds } from "../table/set-numbers";
import type { TableView } from "../table-view";
import { foundText } from "../value/found-text";
import { holdsNothing } from "../value/no-value";
import type { SchemeRow } from "./scheme-row";
import type { SetGroup } from "./shorthand/set-cell";
import type { Unfolded } from "./unfolded";

type Cells = Pick<SchemeRow, "row" | "line" | "scheme">;

const mostSets = 12;

/**
 * A column "Sets" says how often the row's load was done, a column of repetitions how many in each.
 * Where shorthand beside them says otherwise neither counts, and `meaning-twice` is reported.
 */
export function countedGroups(
  { fields: { setCount, reps } }: { readonly fields: Partial<TableView["fields"]> },
  into: Unfolded,
  read: Cells,
  groups: readonly SetGroup[],
): readonly SetGroup[] {
  const sets = countIn(setCount, mostSets, into, read);
  const { row, line, scheme } = read;
  const apart = repsApart(line[reps?.index ?? -1], groups, sets);
  if (apart !== null) return apart;
  const each = countIn(reps, setBounds.reps.high, into, read);
  const differs = (column: Column | undefined) =>
    into.log.addAtSource("meaning-twice", row, column!.index, { other: foundText(line[scheme]) });
  const written = groups.reduce((sum, group) => sum + group.sets, 0);
  if (sets !== null && written > 1 && sets !== written) {
    differs(setCount);
    return [];
  }
  const other = each !== null && groups.some((group) => (group.reps ?? each) !== each);
  if (other) differs(reps);
  return groups.map((group) => ({
    ...group,
    sets: written > 1 ? group.sets : (sets ?? group.sets),
    reps: other ? null : (each ?? group.reps),
  }));
}

/** "5/5/4" beside three sets: each has its own repetitions; null for anything else. */
function repsApart(
  cell: unknown,
  groups: readonly SetGroup[],
  counted: number | null,
): readonly SetGroup[] | null {
  if (typeof cell !== "string" || !/^\s*\d{1,2}(?:\s*[/,;]\s*\d{1,2})+\s*$/.test(cell)) return null;
  const each = cell.split(/[/,;]/).map(Number);
  const [only, second] = groups;
  const alone = second === undefined && only!.sets === 1 && counted !== null;
  const all = groups.flatMap((group) =>
    Array<SetGroup>(alone ? counted : group.sets).fill({ ...group, sets: 1 }),
  );
  if (all.length !== each.length || all.some(({ reps }) => reps !== null)) return null;
  return all.map((group, at) => ({ ...group, reps: each[at]! }));
}

/** What the row's own cell counts; null where it counts nothing, reported where it should. */
function countIn(
  column: Column | undefined,
  most: number,
  { log }: Unfolded,
  { row, line }: Cells,
): number | null {
  if (column === undefined) return null;
  const { index, heading } = column;
  const cell = line[index];
  if (holdsNothing(cell)) return null;
  const count = Number(cell);
  if (Number.isInteger(count) && count >= 1 && count <= most) return count;
  const bounds = { low: 1, high: most, unit: "", heading };
  if (Number.isNaN(count)) log.addAtSource("not-a-number", row, index, { heading });
  else log.addAtSource("implausible", row, index, bounds);
  return null;
}
