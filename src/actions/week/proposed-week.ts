import { blockFromText } from "../../coaching/blocks/block";
import { type Day, dayFromIso, isoFromDay, mondayOf } from "../../coaching/calendar/day";
import {
  type LineChange,
  type ProposedLine,
  proposeLine,
} from "../../coaching/next-week/propose-line";
import type { Wanted } from "../../coaching/next-week/proposed-line";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { rowsByAthlete } from "../../coaching/series/rows-by-athlete";
import { readStack } from "../../rows/value/stack";
import { changeOf, otherTurnsOf, type TurnChanged, type WeekChange } from "../messages/week-change";
import { athleteStates } from "../squad/athlete-states";
import { namesOf } from "../squad/squad-view";
import { type StateOfSquad, stateOfSquad } from "../squad/state-of-squad";
import type { Workbook } from "../workbook";
import { askedInTab } from "./asked-in-tab";
import { changesKept, withRemembered } from "./coach-changes";
import { type ChangeOfAthlete, type FieldByHand, fieldsByHand } from "./fields-by-hand";
import { readableWeekTab, typedInTab } from "./typed-in-tab";
import { writtenKept } from "./written-before";

/** A week's proposal, with the lines as proposed and a coach's changes on top. */
export type ProposedWeek = {
  readonly state: StateOfSquad;
  readonly today: Day;
  readonly monday: Day;
  readonly lines: readonly {
    readonly line: ProposedLine;
    readonly leftOut: boolean;
    readonly noRack: boolean;
    /** Fields that the coach has set to something else than is proposed, now or in an earlier writing. */
    readonly byHand: readonly FieldByHand[];
  }[];
};

/** Next week's sets for every athlete, from the rows and the coach's changes. */
export function proposedWeek(
  workbook: Workbook,
  today: Day,
  asked: Day | null,
  changes: readonly WeekChange[],
): ProposedWeek {
  const state = stateOfSquad(workbook, today, asked);
  const monday = asked ?? mondayOf(state.asOf) + 7;
  const before = changesKept.read(workbook).value;
  const all = withRemembered(before, isoFromDay(monday), changes);
  const stateOf = athleteStates(state);
  const { rows } = state.read;
  const rowsOf = rowsByAthlete(rows);
  const tab = readableWeekTab(workbook, state.read);
  const typed = tab && typedInTab(workbook, tab);
  const askedOf = tab && askedInTab(tab, writtenKept.read(workbook).value);
  const lines = namesOf(state).map((name) => {
    const change = changeOfAthlete(all, name);
    const proposed = (set: LineChange) =>
      proposeLine({
        athlete: athleteNamed(rows.athletes, name) ?? null,
        name,
        state: stateOf(name),
        rows: rowsOf(name),
        unit: state.numbers.unit,
        monday,
        asOf: state.asOf,
        change: set,
        isLeftOut: change.leaveOut === true,
        ...(typed && { typed: (week) => typed(name, week) }),
        ...(askedOf && { asked: (day) => askedOf(name, day) }),
        decided: (week) => {
          const decided = changeOfAthlete(before[isoFromDay(week)] ?? [], name);
          return decided.leaveOut === true ? "left out" : lineChange(decided);
        },
      });
    const line = proposed(lineChange(change));
    return {
      line,
      leftOut: change.leaveOut === true,
      noRack: change.noRack === true,
      byHand: fieldsByHand(change, line, () => proposed({})),
    };
  });
  return { state, today, monday, lines };
}

const changeOfAthlete = (changes: readonly WeekChange[], name: string): ChangeOfAthlete => ({
  ...changeOf(changes, name),
  turns: otherTurnsOf(changes, name),
});

/** A change as the message carries it; a stack or block that cannot be read is left as proposed. */
function lineChange(change: ChangeOfAthlete): LineChange {
  const { sets, sessions, turns, day, contacts, stack, noRack } = change;
  const stackRead = stack === undefined || stack === "" ? null : readStack(stack);
  const dayRead = day === undefined ? null : dayFromIso(day);
  return {
    ...wantedOf(change),
    ...(sets !== undefined && { sets }),
    ...(sessions !== undefined && { sessions }),
    turns: new Map([...turns].map(([turn, set]) => [turn, wantedOf(set)])),
    ...(dayRead !== null && { day: dayRead }),
    ...(contacts !== undefined && { contacts }),
    ...(noRack !== undefined && { noRack }),
    ...(stackRead?.ok && { stackKg: stackRead.value }),
  };
}

function wantedOf({ block, loadKg }: TurnChanged): Wanted {
  const read = block === undefined ? null : blockFromText(block);
  return {
    ...(read?.ok && { block: read.value }),
    ...(loadKg !== undefined && { loadKg }),
  };
}
