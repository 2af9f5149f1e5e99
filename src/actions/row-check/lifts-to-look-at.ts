import type { LiftingSet } from "../../coaching/record/lifting-set";
import { cellOfLift } from "../../rows/name/cell-of-lift";
import { nearLifts } from "../../rows/name/near-lifts";
import { nearLiftWords } from "../../words/row-check";
import type { RowProblem } from "../messages";
import { type ReadWorkbook, sureEnough } from "../read-workbook";

/** Lifts that may be a slip in another's name, each at its first cell, but for those said to be right. */
export function liftsToLookAt(read: ReadWorkbook): RowProblem[] {
  const tabs = read.tabs.filter(
    ({ table, sureness }) => table === "Sets" && sureness >= sureEnough,
  );
  const sets = tabs.map(
    ({ understanding }) => understanding.reading.records as readonly LiftingSet[],
  );
  return nearLifts(sets.flat()).flatMap((lift) => {
    const right = nearLiftWords.right(lift);
    if (read.answers.rightSets.includes(right)) return [];
    const { tab } = tabs[sets.findIndex((all) => all.includes(lift.first))]!;
    return [
      {
        tab: tab.name,
        tabId: tab.id,
        cell: cellOfLift(read.cells(tab.id), lift.first.row, lift.written),
        found: `“${lift.written}”`,
        why: nearLiftWords.why(lift),
        toDo: nearLiftWords.toDo(lift),
        kind: "lift-near",
        mend: null,
        right,
      },
    ];
  });
}
