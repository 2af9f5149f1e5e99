import { exerciseKey } from "../coaching/record/exercise-key";
import type { LiftingSet } from "../coaching/record/lifting-set";
import type { Cells } from "../rows/cells";
import { nearLifts } from "../rows/name/near-lifts";
import { cellAddress } from "../rows/value/cell-address";
import { nearLiftWords } from "../words/row-check";
import type { RowProblem } from "./messages";
import { type ReadWorkbook, sureEnough } from "./read-workbook";

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

/** The lift's own cell in the set's row; the row's first where it is named elsewhere. */
function cellOfLift(cells: Cells, row: number, exercise: string): string {
  const key = exerciseKey(exercise);
  const is = (cell: unknown) => typeof cell === "string" && exerciseKey(cell) === key;
  return cellAddress(row, Math.max(cells[row - 1]!.findIndex(is), 0) + 1);
}
