import type { Athlete } from "../../coaching/record/athlete";
import type { AvailabilitySpell } from "../../coaching/record/availability-spell";
import type { DiaryDay } from "../../coaching/record/diary-day";
import type { JumpAttempt } from "../../coaching/record/jump-attempt";
import type { LiftingSet } from "../../coaching/record/lifting-set";
import type { Plate } from "../../coaching/record/plate";
import type { Race } from "../../coaching/record/race";
import type { Run } from "../../coaching/record/run";
import type { Reading } from "../reading";
import type { TableName } from "../table-name";
import type { TableView } from "../table-view";
import { readAthleteRows } from "./read-athletes";
import { readAvailabilityRows } from "./read-availability";
import { readDiaryRows } from "./read-diary";
import { readJumpRows } from "./read-jumps";
import { readPlateRows } from "./read-plates";
import { readRaceRows } from "./read-races";
import { type RuleSetting, readRuleRows } from "./read-rules";
import { readRunRows } from "./read-runs";
import { readSetRows } from "./read-sets";

/** What one row of each table becomes. */
export type RowOf = {
  Athletes: Athlete;
  Availability: AvailabilitySpell;
  Sets: LiftingSet;
  Jumps: JumpAttempt;
  Diary: DiaryDay;
  Runs: Run;
  Races: Race;
  Plates: Plate;
  Rules: RuleSetting;
};

/** The reader of each table, once its columns are known. */
export const viewReaders: { readonly [T in TableName]: (view: TableView) => Reading<RowOf[T]> } = {
  Athletes: readAthleteRows,
  Availability: readAvailabilityRows,
  Sets: readSetRows,
  Jumps: readJumpRows,
  Diary: readDiaryRows,
  Runs: readRunRows,
  Races: readRaceRows,
  Plates: readPlateRows,
  Rules: readRuleRows,
};
