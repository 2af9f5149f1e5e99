import { type Day, mondayOf } from "../../coaching/calendar/day";
import { type SquadHold, squadHold } from "../../coaching/hold/squad-hold";
import { readinessSettingsAt } from "../../coaching/readiness/rated-settings";
import type { Readiness } from "../../coaching/readiness/readiness";
import { squadReadiness } from "../../coaching/readiness/squad-readiness";
import { gapBetweenSeasons } from "../../coaching/series/season-start";
import { type SquadIndex, squadIndex } from "../../coaching/series/squad-index";
import { type PrintedNumbers, printedNumbers } from "../../words/printed-numbers";
import { numberStyle } from "../number-style";
import { type ReadWorkbook, readWorkbook } from "../read-workbook";
import { type WaitingRows, waitingRows } from "../row-check/waiting-rows";
import type { Workbook } from "../workbook";

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

/**
 * Reads the workbook once and judges the squad as of today, or of the last rows when they are of
 * another season and no week to come is asked for.
 *
 * @param asked Monday of the week asked for; null for none
 */
export function stateOfSquad(
  workbook: Workbook,
  today: Day,
  asked: Day | null = null,
): StateOfSquad {
  const read = readWorkbook(workbook, today);
  const isToCome = asked !== null && asked >= mondayOf(today);
  const asOf = isToCome ? today : dayToReadUpTo(read, today);
  const { rows } = read;
  const index = squadIndex({ sets: rows.sets, jumps: rows.jumps, diary: rows.diary }, asOf);
  return {
    read,
    asOf,
    numbers: printedNumbers(numberStyle(read)),
    index,
    waiting: waitingRows(read, asOf),
    hold: squadHold({ index, plates: rows.plates, athletes: rows.athletes, rules: rows.rules }),
    dayOf: squadReadiness({
      index,
      plates: rows.plates,
      settings: readinessSettingsAt(rows.rules.falseFlagRate),
    }),
  };
}

/**
 * Today, unless the last set, jump or diary row is of a season before: then the Sunday of its week. A
 * squad's break within the season is time off like any other: the week after it comes back from it.
 */
function dayToReadUpTo({ rows }: ReadWorkbook, today: Day): Day {
  let last = Number.NEGATIVE_INFINITY;
  for (const list of [rows.sets, rows.jumps, rows.diary]) {
    for (const { day } of list) if (day <= today && day > last) last = day;
  }
  if (last === Number.NEGATIVE_INFINITY || today - last <= gapBetweenSeasons) return today;
  return mondayOf(last) + 6;
}
