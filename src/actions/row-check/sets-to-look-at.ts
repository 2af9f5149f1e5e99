import { isoFromDay } from "../../coaching/calendar/day";
import type { FarOffSet, SeasonHold } from "../../coaching/hold/season-hold";
import { cellAddress } from "../../rows/value/cell-address";
import { lookWords } from "../../words/row-check";
import type { RowProblem } from "../messages";
import { type ReadWorkbook, sureEnough } from "../read-workbook";
import type { StateOfSquad } from "../squad/state-of-squad";

/** Sets far off all others of their athlete, each at the cell of its load, but for those said to be right. */
export function setsToLookAt({ read, hold, numbers }: StateOfSquad): RowProblem[] {
  return hold.all.flatMap(({ notes }) =>
    notes.flatMap(({ far = [] }) =>
      asked(read, far).map((one) => ({
        ...placeOf(read, one),
        found: numbers.told(lookWords.found(one.set)),
        why: lookWords.why,
        toDo: numbers.told(lookWords.toDo(one)),
        kind: "set-far-off",
        mend: null,
        right: keyOf(one),
      })),
    ),
  );
}

/** Notes of a season without those about sets that were all said to be right. */
export function openNotes(read: ReadWorkbook, { notes }: SeasonHold): SeasonHold["notes"] {
  return notes.filter(({ far }) => !far || asked(read, far).length > 0);
}

function asked({ answers }: ReadWorkbook, far: readonly FarOffSet[]): readonly FarOffSet[] {
  return far.filter((one) => !answers.rightSets.includes(keyOf(one)));
}

/** What a set holds, whatever row it is sorted into: "2026-05-12 Tomas Reyerson, back squat, 107 kg at 0.70 m/s". */
function keyOf({ set }: FarOffSet): string {
  const { athlete, exercise } = set.set;
  return `${isoFromDay(set.day)} ${athlete}, ${exercise}, ${lookWords.found(set)}`;
}

/** Tabs of sets are read one after another: a set's place among all of them tells its tab. */
function placeOf(
  { tabs, rows }: ReadWorkbook,
  { set }: FarOffSet,
): Pick<RowProblem, "tab" | "tabId" | "cell"> {
  let at = rows.sets.indexOf(set.set);
  for (const { table, tab, sureness, understanding } of tabs) {
    if (table !== "Sets" || sureness < sureEnough) continue;
    at -= understanding.reading.records.length;
    if (at >= 0) continue;
    const column = understanding.columns.find(({ field }) => field === "load")?.column ?? 1;
    return { tab: tab.name, tabId: tab.id, cell: cellAddress(set.set.row, column) };
  }
  throw new Error("No set.");
}
