import { numberCell } from "../../column/number-cell";
import { isDitto } from "../../value/ditto";
import { foundText } from "../../value/found-text";
import { holdsNothing } from "../../value/no-value";
import type { Placed } from "../flat-rows";
import type { Unfolded } from "../unfolded";
import type { SetGroup } from "./scheme";

type Shared = Readonly<Record<string, Placed | undefined>>;

/**
 * Groups of sets with loads and repetitions that stand beside their shorthand as well. Where the two
 * differ neither counts. Reports `not-a-number` and `meaning-twice`.
 */
export function withFiguresBeside(
  { log, source }: Unfolded,
  row: number,
  scheme: number,
  written: readonly SetGroup[],
  shared: Shared,
): { readonly groups: readonly SetGroup[]; readonly shared: Shared } {
  let groups = written;
  let kept = shared;
  for (const field of ["load", "reps"] as const) {
    const column = shared[field]?.[1] ?? scheme;
    // As written: a load that holds from above says nothing against the row's own.
    const cell = source[row]![column];
    if (column === scheme || holdsNothing(cell) || isDitto(cell)) continue;
    const value = numberCell(String(cell))?.value;
    if (groups.every((group) => group[field] === null || group[field] === value)) continue;
    if (value === undefined) log.addAtSource("not-a-number", row, column);
    else {
      log.addAtSource("meaning-twice", row, column, { other: foundText(source[row]![scheme]) });
      groups = groups.map((group) => ({ ...group, [field]: null }));
      kept = { ...kept, [field]: undefined };
    }
  }
  return { groups, shared: kept };
}
