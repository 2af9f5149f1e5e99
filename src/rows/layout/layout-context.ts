import type { Day } from "../../coaching/calendar/day";
import type { Cells } from "../cells";
import type { TableName } from "../table-name";
import type { DateOrder } from "../value/day-text";
import type { Unit } from "../value/units";
import type { TabAnswers } from "./tab-answers";

/** What a layout is unfolded from. */
export type LayoutContext = {
  readonly table: TableName;
  readonly cells: Cells;
  /** Row after the last filled one. */
  readonly end: number;
  /** Name of the tab, "" when not known. */
  readonly title: string;
  /** The day asked about; settles the year of dates that carry none. */
  readonly today: Day | null;
  /** What the coach answered about dates and loads; null when nothing was asked. */
  readonly dateOrder: DateOrder | null;
  readonly massUnit: Unit | null;
  /** The coach said that it is this table: its cells need not prove it. */
  readonly said: boolean;
  /** Columns the coach said to leave alone, from 0. */
  readonly leftAlone: readonly number[];
  /** What the coach answered about the whole tab. */
  readonly tab: TabAnswers;
};
