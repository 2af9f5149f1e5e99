import type { Day } from "../../../coaching/calendar/day";
import type { Unit } from "../../value/units";
import type { JumpPart } from "./jump-title";
import type { Try } from "./test-heading";

/** A column of a test or a lift, and what its heading says of the figures. */
export type TestColumn = Try & {
  readonly index: number;
  readonly heading: string;
  readonly part: JumpPart;
  readonly unit: Unit | null;
};

/** Whose row it is, of which day; null where that cannot be read. */
export type Who = { readonly athlete: string; readonly day: Day | null };
