import type { LiftingSet } from "../../coaching/record/lifting-set";
import { withEvening } from "../../coaching/series/with-evening";
import { newDayAside } from "../column/day-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { carefulSetReader } from "./careful-sets";
import { DoubledRows } from "./doubled-rows";
import { LoadsSeen } from "./loads-seen";
import { reportDoubled } from "./needed";
import { OpenBoxes } from "./open-boxes";
import { PlainRows } from "./plain-rows";
import { questionDays } from "./question-days";
import { type LineResult, readLines } from "./read-lines";
import { speedMeaning } from "./set-kinds";
import { setNumbers } from "./set-numbers";

/** From so many rows on, rows that say everything plainly are looked up in place, not copied. */
const manyRows = 250;

/** Rows of the Sets table: one row a set, or one row a repetition put together to sets. */
export function readSetRows(view: TableView, plainFrom: number = manyRows): Reading<LiftingSet> {
  const doubled = new DoubledRows(view);
  const loads = new LoadsSeen();
  const boxes = new OpenBoxes(view);
  const shared = {
    view,
    numbers: setNumbers(view),
    days: newDayAside(),
    meaning: speedMeaning(view.fields.speed?.words ?? ""),
    doubled,
    loads,
    boxes,
  };
  const careful = carefulSetReader(shared);
  const plainRows =
    view.end - view.first < plainFrom || rowsLeanOnOthers(view) ? null : new PlainRows(shared);

  const readLine = (line: readonly unknown[], row: number): LineResult<LiftingSet> => {
    const set = plainRows === null ? null : plainRows.read(line, row);
    if (plainRows === null || set === null) return careful.read(line, row);
    loads.see(set.exercise);
    const earlier = plainRows.mayRepeat ? doubled.earlierPlain(line, row) : -1;
    return earlier < 0 ? set : reportDoubled(view, row, earlier);
  };

  const reading = readLines<LiftingSet>(view, readLine, careful.cells);
  loads.report(view);
  boxes.report();
  return questionDays(view, { ...reading, records: withEvening(reading.records) });
}

/** True where a row is a part of a set or may be none, or takes its day, name or lift from a row above. */
function rowsLeanOnOthers({ fields }: TableView): boolean {
  const carried = [fields.day, fields.athlete, fields.exercise].some((one) => one?.carried);
  return carried || (fields.rep ?? fields.done) !== undefined;
}
