import type { Run } from "../../coaching/record/run";
import { choiceColumn } from "../column/choice-column";
import { dayColumn, newDayAside } from "../column/day-column";
import { lengthColumn, minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { quantityColumn } from "../column/quantity-column";
import { textColumn } from "../column/text-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { DoubledRows } from "./doubled-rows";
import { reportBlank, reportDoubled } from "./needed";
import { readLines } from "./read-lines";
import { runKindIn, runKinds } from "./run-kinds";

/** Rows of the Runs table, done or planned. */
export function readRunRows(view: TableView): Reading<Run> {
  const { fields } = view;
  const aside = newDayAside();
  const readDay = dayColumn(view, fields.day, true, aside);
  const minute = minuteColumn(view, fields.minute);
  const name = textColumn(view, fields.athlete, true);
  const kind = choiceColumn(view, fields.kind, runKinds, "read on", runKindIn);
  const minutes = lengthColumn(view, fields.minutes, "min", { low: 0, high: 900 });
  const exertion = numberColumn(view, fields.exertion, { low: 0, high: 10 });
  const km = quantityColumn(view, fields.km, plausible.km);
  const doubled = new DoubledRows(view);

  return readLines<Run>(view, (line, row) => {
    const day = readDay(line, row);
    if (day === null) return null;
    const athlete = name(line, row);
    if (athlete === "") return reportBlank(view, fields.athlete, row);
    const run = {
      row: row + 1,
      day,
      minute: minute(line, row) ?? aside.minute,
      athlete,
      kind: kind(line, row),
      minutes: minutes(line, row),
      exertion: exertion(line, row),
      km: km(line, row),
    };
    // Two easy half-hours on one day are common; with the distance equal too it is one run twice.
    if (run.km !== null || run.minute !== null) {
      const earlier = doubled.earlier(line, row);
      if (earlier >= 0) return reportDoubled(view, row, earlier);
    }
    return run;
  });
}
