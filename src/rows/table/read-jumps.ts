import type { JumpAttempt } from "../../coaching/record/jump-attempt";
import { valueOrNull } from "../../outcome";
import { yesNoColumn } from "../column/choice-column";
import { newDayAside } from "../column/day-column";
import { minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { type Aside, quantityColumn } from "../column/quantity-column";
import { textColumn } from "../column/text-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { holdsNothing } from "../value/no-value";
import { readStack } from "../value/stack";
import { athleteDay } from "./athlete-day";
import { DoubledRows } from "./doubled-rows";
import { reportBlank, reportDoubled } from "./needed";
import { questionDays } from "./question-days";
import { readLines } from "./read-lines";

/** Rows of the Jumps table, one attempt or one test day's figure each. */
export function readJumpRows(view: TableView): Reading<JumpAttempt> {
  const { fields, log } = view;
  const dayAside = newDayAside();
  const aside: Aside = { note: "", perHand: false };
  const whose = athleteDay(view, dayAside);
  const readMinute = minuteColumn(view, fields.minute);
  const readTest = textColumn(view, fields.test, true);
  const attempt = numberColumn(view, fields.attempt, { low: 1, high: 200, whole: true });
  const height = quantityColumn(view, fields.height, plausible.heightCm, aside);
  const cleared = yesNoColumn(view, fields.cleared);
  const drop = quantityColumn(view, fields.drop, plausible.dropCm);
  const landing = quantityColumn(view, fields.landing, plausible.landingCm);
  const contact = quantityColumn(view, fields.contact, plausible.contactS);
  const flight = quantityColumn(view, fields.flight, plausible.flightS);
  const note = textColumn(view, fields.note);
  const doubled = new DoubledRows(view);
  const figures = [fields.height, fields.stack, fields.contact, fields.flight];

  const reading = readLines<JumpAttempt>(
    view,
    (line, row) => {
      const read = whose(line, row);
      if (read === null) return null;
      const { day, athlete } = read;
      const test = readTest(line, row);
      if (test === "") return reportBlank(view, fields.test, row);
      const number = attempt(line, row);
      const minute = readMinute(line, row) ?? dayAside.minute;
      if (number !== null || minute !== null) {
        const earlier = doubled.earlier(line, row);
        if (earlier >= 0) return reportDoubled(view, row, earlier);
      }
      aside.note = "";
      const stackKg = stackOf(view, line, row);
      const dropStackKg = plates(line[fields.drop?.index ?? -1]);
      const record = {
        row: row + 1,
        day,
        athlete,
        test,
        heightCm: height(line, row),
        stackKg,
        cleared: cleared(line, row),
        dropCm: dropStackKg ? null : drop(line, row),
        ...(dropStackKg && { dropStackKg }),
        landingCm: landing(line, row),
        contactS: contact(line, row),
        flightS: flight(line, row),
        note: [note(line, row), aside.note].filter((words) => words !== "").join("; "),
      };
      const empty = figures.every((column) => column === undefined || isBlank(line[column.index]));
      if (empty && record.note === "" && record.cleared === null)
        log.add("no-figure", row, fields.height?.index ?? fields.stack?.index ?? -1, "");
      return record;
    },
    [
      readMinute,
      readTest,
      attempt,
      height,
      (line, row) => stackOf(view, line, row),
      cleared,
      drop,
      landing,
      contact,
      flight,
      note,
    ],
  );
  return questionDays(view, reading);
}

function stackOf(view: TableView, line: readonly unknown[], row: number): readonly number[] {
  const column = view.fields.stack;
  if (column === undefined) return [];
  const cell = line[column.index];
  if (holdsNothing(cell)) return [];
  const stack = readStack(cell);
  if (stack.ok) return stack.value;
  view.log.add(stack.refusal.code, row, column.index, cell, stack.refusal.facts);
  return [];
}

/** Plates in a cell of heights, "2x20+5"; null for a figure or anything else. */
function plates(cell: unknown): readonly number[] | null {
  if (typeof cell !== "string" || !/[x×*+]/i.test(cell)) return null;
  return valueOrNull(readStack(cell));
}
