import type { Run } from "../../coaching/record/run";
import { choiceColumn } from "../column/choice-column";
import { newDayAside } from "../column/day-column";
import { lengthColumn, minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { quantityColumn } from "../column/quantity-column";
import { textColumn } from "../column/text-column";
import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import type { RowNote } from "../layout/row-note";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { cellAddress } from "../value/cell-address";
import { athleteDay } from "./athlete-day";
import { DoubledRows } from "./doubled-rows";
import { reportDoubled } from "./needed";
import { readLines } from "./read-lines";
import { runInWords, runKindIn } from "./run-in-words";
import { runKinds } from "./run-kinds";

/** A day on which nobody ran, written where the kind of a run would stand. */
const restDay = /^(?:rest(?: day)?|off|day off|no run|ruhe(?:tag)?|frei|pause)$/;

/** Rows of the Runs table, done or planned. */
export function readRunRows(view: TableView): Reading<Run> {
  const { fields } = view;
  const aside = newDayAside();
  const whose = athleteDay(view, aside);
  const minute = minuteColumn(view, fields.minute);
  const kindOf = choiceColumn(view, fields.kind, runKinds, "read on", runKindIn);
  const isRest = (line: readonly unknown[]) =>
    restDay.test(plainWords(line[fields.kind?.index ?? -1]));
  const words = runInWords(view, fields.kind);
  const figures = (of: (field: string) => Column | undefined) => ({
    minutes: lengthColumn(view, of("minutes"), "min", { low: 0, high: 900 }),
    exertion: numberColumn(view, of("exertion"), { low: 0, high: 10, rangeHighEnd: true }),
    km: quantityColumn(view, of("km"), plausible.km),
  });
  const own = figures((field) => fields[field]);
  // "10k easy" is read where the kind stands; a figure in its own column counts before it.
  const beside = figures(() => fields.kind && { ...fields.kind, unit: null });
  const note = textColumn(view, fields.note);
  const notes: RowNote[] = [];
  const doubled = new DoubledRows(view);

  const reading = readLines<Run>(
    view,
    (line, row) => {
      const read = whose(line, row);
      if (read === null) return null;
      const { day, athlete } = read;
      const more = words(line, row);
      const left: string[] = [];
      const figure = (field: keyof typeof own): number | null => {
        const found = own[field](line, row);
        const said = more?.[field] ?? "";
        if (said === "") return found;
        if (found === null) return beside[field](lineWith(fields.kind!.index, said), row);
        left.push(said);
        return found;
      };
      const run = {
        row: row + 1,
        day,
        minute: minute(line, row) ?? aside.minute,
        athlete,
        kind: isRest(line) ? null : kindOf(line, row),
        minutes: figure("minutes"),
        exertion: figure("exertion"),
        km: figure("km"),
      };
      // Two easy half-hours on one day are common; with the distance equal too it is one run twice.
      if (run.km !== null || run.minute !== null) {
        const earlier = doubled.earlier(line, row);
        if (earlier >= 0) return reportDoubled(view, row, earlier);
      }
      if (more !== null) left.push(more.note);
      const said = left.filter((one) => one !== "").join(" ");
      if (said !== "") notes.push(noteAt(row, fields.kind!.index, run, said));
      const noted = note(line, row);
      if (noted !== "") notes.push(noteAt(row, fields.note!.index, run, noted));
      const isRun = run.minutes || run.km || run.exertion;
      return !isRun && (isRest(line) || run.minutes === 0) ? "no-record" : run;
    },
    [minute, kindOf, ...Object.values(own), note],
  );
  return notes.length === 0 ? reading : { ...reading, notes };
}

/** A line with one cell alone, for a reader of its column. */
function lineWith(index: number, cell: string): readonly unknown[] {
  const line: unknown[] = [];
  line[index] = cell;
  return line;
}

function noteAt(row: number, column: number, { athlete, day }: Run, words: string): RowNote {
  const cell = cellAddress(row + 1, column + 1);
  return { cell, row: row + 1, column: column + 1, athlete, day, span: "day", words };
}
