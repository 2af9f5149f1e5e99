import type { DayAside } from "../column/day-column";
import type { TableView } from "../table-view";
import type { DoubledRows } from "./doubled-rows";
import type { LoadsSeen } from "./loads-seen";
import type { OpenBoxes } from "./open-boxes";
import type { speedMeaning } from "./set-kinds";
import type { SetNumbers } from "./set-numbers";

/** What the readers of one Sets table share. */
export type SetsBeingRead = {
  readonly view: TableView;
  readonly numbers: SetNumbers;
  readonly days: DayAside;
  readonly meaning: ReturnType<typeof speedMeaning>;
  readonly doubled: DoubledRows;
  readonly loads: LoadsSeen;
  readonly boxes: OpenBoxes;
};
