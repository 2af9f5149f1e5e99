import { tooManyArguments } from "../words/too-many-arguments";
import { SheetClock } from "./sheet-clock";

/**
 * What a formula was given, its dates as the sheet shows them. Throws when something stands past its
 * last parameter, which would not be read.
 *
 * @param most parameters of the formula
 */
export function formulaArguments(given: ArrayLike<unknown>, name: string, most: number): unknown {
  const all = Array.from(given);
  if (all.slice(most).some((one) => one !== undefined && one !== "")) {
    throw new Error(tooManyArguments(name, most, all.length));
  }
  const zone = () => SpreadsheetApp.getActive().getSpreadsheetTimeZone();
  return new SheetClock(zone).shown(all);
}
