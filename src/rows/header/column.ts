import type { DateOrder } from "../value/day-text";
import type { Unit } from "../value/units";

/** One column whose meaning is known. `index` counts from 0. */
export type Column = {
  readonly index: number;
  readonly unit: Unit | null;
  /** The heading as written, for sentences. */
  readonly heading: string;
  /** The heading's words in plain lower case, for what they say besides the meaning. */
  readonly words: string;
  /** Order of day and month, when the coach has said. */
  readonly dateOrder?: DateOrder;
  /** Blank cells repeat what stands above, as under merged cells. */
  readonly carried?: boolean;
};
