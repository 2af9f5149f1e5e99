import { setsByReps } from "../../coaching/blocks/block";
import { type Day, isoFromDay } from "../../coaching/calendar/day";
import type { TypedSession } from "../../coaching/next-week/proposed-line";
import { mostSessions } from "../../coaching/season/usual-sessions-a-week";
import { kgFromPounds } from "../../coaching/units/mass";
import { plausible } from "../../rows/column/quantity";
import { numberFromText } from "../../rows/value/number-text";
import type { ReadWorkbook } from "../read-workbook";
import type { Workbook } from "../workbook";
import { deletedIn } from "./deleted-in";
import { lineName } from "./plan-lines";
import { findWeekTab, readWeekTab, UnreadWeekTab, type WeekTab } from "./week-tab";
import { earlierTexts, writtenKept } from "./written-before";

/**
 * What the coach has typed over loads and sets of the Next week tab, or that the row was deleted, by
 * athlete, week and session: the weeks after count on it. Text that is no load or no sets counts as
 * nothing typed.
 */
export function typedInTab(
  workbook: Workbook,
  tab: WeekTab,
): (athlete: string, monday: Day) => ReadonlyMap<number, TypedSession | "deleted"> {
  const before = writtenKept.read(workbook).value;
  const isDeleted = deletedIn(tab, before);
  return (athlete, monday) => {
    const typed = new Map<number, TypedSession | "deleted">();
    for (let session = 1; session <= mostSessions; session++) {
      const name = lineName(isoFromDay(monday), athlete, session);
      const row = tab.rowOf.get(name);
      if (row === undefined) {
        if (isDeleted(name)) typed.set(session, "deleted");
        continue;
      }
      const own = (column: "load" | "sets") => {
        const text = tab.text(row, tab.columnOf[column]);
        return earlierTexts(before, name, column).includes(text) ? "" : text;
      };
      const loadKg = massFrom(own("load"), tab.unit);
      const block = setsByReps(own("sets"));
      if (loadKg !== null || block !== null)
        typed.set(session, { ...(loadKg !== null && { loadKg }), ...block });
    }
    return typed;
  };
}

/**
 * The Next week tab, where there is one and it can be read; of one that no longer can Next week itself
 * tells.
 *
 * @param read the workbook as it was read for the week: its tabs are not read again
 */
export function readableWeekTab(
  workbook: Workbook,
  { cells }: Pick<ReadWorkbook, "cells">,
): WeekTab | null {
  const tab = findWeekTab(workbook);
  if (!tab) return null;
  try {
    return readWeekTab(workbook, tab, cells(tab.id));
  } catch (error) {
    // Anything else, as cells that came only in part, is no word of what was typed.
    if (error instanceof UnreadWeekTab) return null;
    throw error;
  }
}

/** A load in a cell of the tab, kg; null for what is none. */
export function massFrom(text: string, unit: WeekTab["unit"]): number | null {
  const found = numberFromText(text);
  if (found === null || found.unsure || found.thousands !== null) return null;
  const kg = unit === "lb" ? kgFromPounds(found.value) : found.value;
  return kg > 0 && kg <= plausible.loadKg.high ? kg : null;
}
