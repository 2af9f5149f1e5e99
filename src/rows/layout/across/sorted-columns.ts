import type { Column } from "../../header/column";
import { namesSummary } from "../../table/summary-lines";
import { figures, type HeadingParts } from "./heading-parts";
import { isCounted } from "./labels-over";

export type Group = { of: HeadingParts; columns: Record<string, Column>; reps: Column[] };

type Sorted = {
  /** Columns that hold for all groups, by meaning. */
  readonly shared: Record<string, Column>;
  /** Places of all columns that are read, or that say nothing more. */
  readonly known: Set<number>;
  readonly groups: readonly Group[];
};

/** Each column with the group it stands in, or with those that all groups share. */
export function sortedColumns({
  all,
  labels,
  left,
  fieldOf,
}: {
  readonly all: readonly HeadingParts[];
  readonly labels: ReadonlySet<string>;
  readonly left: number;
  readonly fieldOf: (one: HeadingParts) => string | null;
}): Sorted {
  const shared: Record<string, Column> = {};
  const known = new Set<number>();
  const groups = new Map<string, Group>();
  const take = (into: Record<string, Column>, field: string, column: Column) => {
    if (into[field] !== undefined) return;
    into[field] = column;
    known.add(column.index);
  };
  const right = ({ column }: HeadingParts) => column.index >= left;
  const ofSets = all.filter(({ set }) => set !== "");
  const several = new Set(ofSets.map(({ set }) => set)).size > 1;
  // The mean or the best of the sets says nothing that they do not, nor does how many there are.
  const isDerived = (one: HeadingParts, field: string | null) => {
    if (!several || one.set !== "") return false;
    if (field === "setCount") return true;
    const summary =
      (right(one) && namesSummary(one.label.split(" ").pop())) ||
      (field === "speed" && ofReps.test(one.column.words));
    return summary && (field === null || ofSets.some((other) => fieldOf(other) === field));
  };
  for (const heading of all) {
    const { column, label } = heading;
    const field = fieldOf(heading);
    const key = keyOf(heading);
    if (isDerived(heading, field)) known.add(column.index);
    else if (field === null || (right(heading) && label !== "" && !labels.has(label))) continue;
    else if (!right(heading) || key === noGroup || !isInside(field, heading, all))
      take(shared, field, column);
    else {
      const group = groups.get(key) ?? { of: heading, columns: {}, reps: [] };
      groups.set(key, group);
      if (!field.startsWith("rep ")) take(group.columns, field, column);
      else {
        group.reps.push(column);
        known.add(column.index);
      }
    }
  }
  return { shared, known, groups: [...groups.values()] };
}

const ofReps = /^(?:mean|avg|average|best|fastest|max|peak|top|mittel|beste)\b/;

const noGroup = "|";
const keyOf = ({ set, label }: HeadingParts) => `${set}|${label}`;

/** Figures are of what they stand under; notes and the like when others have theirs, or stand further right. */
function isInside(field: string, one: HeadingParts, all: readonly HeadingParts[]): boolean {
  if (figures.test(field)) return true;
  return (
    all.some(
      (other) =>
        keyOf(other) !== keyOf(one) && isCounted(other) && other.column.index > one.column.index,
    ) || all.some((other) => keyOf(other) !== keyOf(one) && other.field === one.field)
  );
}
