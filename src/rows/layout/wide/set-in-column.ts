import type { Placed } from "../flat-rows";
import { emitSets } from "../shorthand/emit-sets";
import { orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import type { TabAnswers } from "../tab-answers";
import type { Unfolded } from "../unfolded";
import { withWords } from "../with-words";
import type { TestColumn, Who } from "./test-column";

/** Reads a cell under a lift's name as its sets; true where it held some. */
export function setInColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  { index, heading, test, unit }: TestColumn,
  shared: Readonly<Record<string, Placed | undefined>>,
  tab: TabAnswers,
  { athlete, day }: Who,
): boolean {
  const said = setCell(line[index], schemeSense(orderFromWords(heading), tab.setsFirst));
  if (said.is === "none") into.note(row, index, athlete, day, "day", said.note);
  else if (said.is !== "sets")
    into.log.addAtSource(
      said.is === "order-unsettled" ? "scheme-order-unsettled" : "scheme-unread",
      row,
      index,
    );
  else {
    const { note, ...rest } = shared;
    const place = {
      row,
      schemeColumn: index,
      speedColumn: index,
      shared: { ...rest, exercise: [test, index] as Placed },
      note: withWords(note, said.note, index),
      unit,
    };
    emitSets(into, place, said.groups, said.speeds, tab.speeds ?? null);
  }
  return said.is === "sets";
}
