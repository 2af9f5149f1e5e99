import type { Column } from "../../header/column";
import type { Placed } from "../unfolded";

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
  /** Every column that is spoken for. */
  readonly known: ReadonlySet<number>;
};
