import { SheetClock } from "./sheet-clock";

/** What a formula was given, its dates as the sheet shows them. */
export function formulaArguments(given: ArrayLike<unknown>): unknown {
  const zone = () => SpreadsheetApp.getActive().getSpreadsheetTimeZone();
  return new SheetClock(zone).shown(Array.from(given));
}
