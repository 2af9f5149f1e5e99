import type { Day } from "../coaching/calendar/day";
import { type SquadHold, squadHold } from "../coaching/hold/squad-hold";
import { readinessSettingsAt } from "../coaching/readiness/rated-settings";
import type { Readiness } from "../coaching/readiness/readiness";
import { squadReadiness } from "../coaching/readiness/squad-readiness";
import { type SquadIndex, squadIndex } from "../coaching/series/squad-index";
import { type PrintedNumbers, printedNumbers } from "../words/printed-numbers";
import { numberStyle } from "./number-style";
import { type ReadWorkbook, readWorkbook } from "./read-workbook";
import { type WaitingRows, waitingRows } from "./waiting-rows";
import type { Workbook } from "./workbook";

/** A squad's rows with every judgement on them up to one day. */
export type StateOfSquad = {
  readonly read: ReadWorkbook;
  readonly asOf: Day;
  /** Unit and decimal mark of the coach's rows. */
  readonly numbers: PrintedNumbers;
  readonly index: SquadIndex;
  readonly hold: SquadHold;
  readonly waiting: (athlete: string) => WaitingRows;
  readonly dayOf: (athlete: string, day?: Day) => Readiness;
};

/** A workbook looked at long after its last row is read as of that row's week, not as of today. */
const stillCurrentDays = 21;

/** Reads the workbook once and judges the squad as of today, or of the last rows when they are old. */
export function stateOfSquad(workbook: Workbook, today: Day): StateOfSquad {
  const read = readWorkbook(workbook, today);
  const asOf = dayToReadUpTo(read, today);
  const { rows } = read;
  const index = squadIndex({ sets: rows.sets, jumps: rows.jumps, diary: rows.diary }, asOf);
  return {
    read,
    asOf,
    numbers: printedNumbers(numberStyle(read)),
    index,
    waiting: waitingRows(read),
    hold: squadHold({ index, plates: rows.plates, athletes: rows.athletes, rules: rows.rules }),
    dayOf: squadReadiness({
      index,
      plates: rows.plates,
      settings: readinessSettingsAt(rows.rules.falseFlagRate),
    }),
  };
}

/** Today, unless the last set, jump or diary row is weeks old: then the Sunday of its week. */
function dayToReadUpTo({ rows }: ReadWorkbook, today: Day): Day {
  let last = Number.NEGATIVE_INFINITY;
  for (const list of [rows.sets, rows.jumps, rows.diary]) {
    for (const { day } of list) if (day <= today && day > last) last = day;
  }
  if (last === Number.NEGATIVE_INFINITY || today - last <= stillCurrentDays) return today;
  const weekday = (last + 3) % 7;
  return last + (6 - weekday);
}
