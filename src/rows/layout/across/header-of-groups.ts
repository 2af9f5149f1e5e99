import type { Column } from "../../header/column";
import type { Placed } from "../flat-rows";

/** Columns of one lift, one set or one athlete, side by side with those of another. */
export type HeadedGroup = {
  readonly columns: Readonly<Record<string, Column>>;
  readonly reps: readonly Column[];
  readonly exercise: Placed | null;
  readonly athlete: Placed | null;
  readonly set: Placed | null;
};

/** A header in which the same figures stand under several lifts, sets or athletes. */
export type HeadedGroups = {
  /** Its uppermost row. */
  readonly top: number;
  /** Column at which the first of them begins; what stands left of it above the header is no heading. */
  readonly left: number;
  /** What holds for the whole row. */
  readonly shared: Readonly<Record<string, Column>>;
  readonly groups: readonly HeadedGroup[];
  /** The groups may be repetitions of one set as well. */
  readonly isOpen: boolean;
  /** Every column that is spoken for. */
  readonly known: ReadonlySet<number>;
};

/** The groups as the coach said: one for each set, or each repetition of the row's one set. */
export function groupsAsSaid(
  across: HeadedGroups,
  speeds: "each set" | "each rep" | undefined,
): HeadedGroups {
  if (!across.isOpen || speeds === undefined) return across;
  const { groups } = across;
  const reps = groups.flatMap(({ columns }) => Object.values(columns));
  const ofOne = [{ ...groups[0]!, columns: {}, reps, set: null }];
  return { ...across, isOpen: false, groups: speeds === "each rep" ? ofOne : groups };
}
