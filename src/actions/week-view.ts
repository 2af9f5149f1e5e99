import { blockFromText, blockText, rotation } from "../coaching/blocks/block";
import { plateStepKg } from "../coaching/blocks/plate-loading";
import { type Day, dayFromIso, isoFromDay, mondayOf } from "../coaching/calendar/day";
import {
  type LineChange,
  type ProposedLine,
  proposeLine,
} from "../coaching/next-week/propose-line";
import { nameKey } from "../coaching/record/name-key";
import { readStack } from "../rows/value/stack";
import { cautions } from "../words/cautions";
import { dayWords, weekdayWords } from "../words/days";
import { dressOf } from "../words/dress";
import { byHandWords, ifWrittenWords } from "../words/next-week-tab";
import { countWords, sentenceWords } from "../words/reasons-figures";
import { holdReason, holdWords } from "../words/reasons-hold";
import {
  bandChangeWords,
  bandLiftWords,
  bandSpeedWords,
  briefWords,
  consequenceWords,
  insteadCellWords,
  lineReasonWords,
  platesWords,
  stackWords,
} from "../words/week";
import { gymDaysWords } from "../words/week-days";
import { weekNoteWords } from "../words/week-view";
import { athleteStates } from "./athlete-states";
import { damagedMemories } from "./forget-damaged";
import type { WeekChange, WeekLine, WeekSession, WeekView } from "./messages";
import { namesOf } from "./squad-view";
import { type StateOfSquad, stateOfSquad } from "./state-of-squad";
import { withRemembered } from "./week/coach-changes";
import { findWeekTab, readWeekTab } from "./week/week-tab";
import { weekToWrite } from "./week/week-to-write";
import { weekDifference } from "./week/write-week";
import type { Workbook } from "./workbook";

/** A week's proposal, with the lines as proposed and a coach's changes on top. */
export type ProposedWeek = {
  readonly state: StateOfSquad;
  readonly monday: Day;
  readonly lines: readonly {
    readonly line: ProposedLine;
    readonly leftOut: boolean;
    readonly noRack: boolean;
    /** Fields of the proposal the coach has changed, now or in an earlier writing. */
    readonly byHand: readonly string[];
  }[];
};

/** Step of the load's buttons in a gym whose plates are not written down, kg (common practice, no source). */
const usualStepKg = 2.5;

/** Next week's sets for the squad, the odd lines to be read first. */
export function weekView(
  workbook: Workbook,
  today: Day,
  monday: Day | null,
  changes: readonly WeekChange[],
): WeekView {
  const week = proposedWeek(workbook, today, monday, changes);
  const { state } = week;
  const next = mondayOf(state.asOf) + 7;
  const mondays = [next - 7, next, next + 7, next + 14, next + 21];
  const lines = week.lines.map((one) => weekLine(state, one));
  const already = weekAlready(workbook, week.monday);
  const difference = weekDifference(workbook, weekToWrite(week, null));
  return {
    damaged: damagedMemories(workbook, ["answers", "next week", "week changes"]),
    monday: isoFromDay(week.monday),
    mondays: mondays.map((day) => ({ monday: isoFromDay(day), label: dayWords(day) })),
    notes: weekNotes(week),
    lines: [...lines].sort((a, b) => Number(b.odd) - Number(a.odd)),
    rowsToWrite: lines.reduce((sum, line) => sum + (line.leftOut ? 0 : line.sessions.length), 0),
    already: already === 0 || difference === null ? "" : ifWrittenWords(difference),
    stepKg: plateStepKg(state.read.rows.plates) || usualStepKg,
    canTakeBack: already > 0,
    cautions,
  };
}

export function proposedWeek(
  workbook: Workbook,
  today: Day,
  asked: Day | null,
  changes: readonly WeekChange[],
): ProposedWeek {
  const state = stateOfSquad(workbook, today);
  const monday = asked ?? mondayOf(state.asOf) + 7;
  const all = withRemembered(workbook, isoFromDay(monday), changes);
  const stateOf = athleteStates(state);
  const { rows } = state.read;
  const lines = namesOf(state).map((name) => {
    const change = all.find(({ athlete }) => nameKey(athlete) === nameKey(name));
    const line = proposeLine({
      athlete: rows.athletes.find((one) => nameKey(one.athlete) === nameKey(name)) ?? null,
      name,
      state: stateOf(name),
      rows,
      monday,
      asOf: state.asOf,
      ...(change && { change: lineChange(change) }),
    });
    return {
      line,
      leftOut: change?.leaveOut === true,
      noRack: change?.noRack === true,
      byHand: change === undefined ? [] : Object.keys(change).filter((one) => one !== "athlete"),
    };
  });
  return { state, monday, lines };
}

/** A change as the message carries it; a stack or block that cannot be read is left as proposed. */
function lineChange({ block, sets, loadKg, day, contacts, stack, noRack }: WeekChange): LineChange {
  const blockRead = block === undefined ? null : blockFromText(block);
  const stackRead = stack === undefined || stack === "" ? null : readStack(stack);
  const dayRead = day === undefined ? null : dayFromIso(day);
  return {
    ...(blockRead?.ok && { block: blockRead.value }),
    ...(sets !== undefined && { sets }),
    ...(loadKg !== undefined && { loadKg }),
    ...(dayRead !== null && { day: dayRead }),
    ...(contacts !== undefined && { contacts }),
    ...(noRack !== undefined && { noRack }),
    ...(stackRead?.ok && { stackKg: stackRead.value }),
  };
}

function weekLine(
  state: StateOfSquad,
  { line, leftOut, noRack, byHand }: ProposedWeek["lines"][number],
): WeekLine {
  const season = state.hold.of(line.athlete);
  const about = state.read.rows.athletes.find(
    (one) => nameKey(one.athlete) === nameKey(line.athlete),
  );
  const word = line.not === "out" ? "out" : holdWords(season);
  return {
    athlete: line.athlete,
    group: about?.group ?? "",
    event: about?.event ?? "",
    odd: line.odd,
    word,
    dress: dressOf(word),
    brief: briefWords(line),
    why: [
      ...(byHand.length > 0 ? [byHandWords(byHand)] : []),
      ...line.reasons.map(lineReasonWords),
      sentenceWords(holdReason(season)),
    ],
    sessions: line.sessions.map(weekSession),
    leftOut,
    noRack,
    daysSaid: line.days === null ? [] : gymDaysWords(line.days),
    ahead: line.outlook.map(({ monday, block, sets, loadKg }) => ({
      week: dayWords(monday),
      block: blockText({ sets, reps: block.reps }),
      loadKg,
    })),
    blocks: rotation.map(blockText),
    days: (line.days?.all ?? []).map(({ day, refused }) => ({
      day: isoFromDay(day),
      label: `${weekdayWords(day)}${refused ? ", refused" : ""}`,
      why: refused?.code ?? "",
    })),
  };
}

function weekSession(session: ProposedLine["sessions"][number]): WeekSession {
  return {
    day: isoFromDay(session.day),
    dayWords: weekdayWords(session.day),
    block: blockText(session.block),
    sets: session.sets,
    reps: session.reps,
    loadKg: session.loadKg,
    plates: session.plates,
    platesWords: platesWords(session.plates),
    barKg: session.barKg,
    markerKg: session.markerKg,
    speedFloor: session.speedFloor === null ? null : Math.round(100 * session.speedFloor) / 100,
    stack:
      session.stackKg.length > 0
        ? stackWords(session.stackKg)
        : session.stackCm === null
          ? ""
          : `${session.stackCm} cm`,
    contacts: session.contacts,
    bands: session.bands.map((band) => ({
      speed: bandSpeedWords(band),
      lift: bandLiftWords(band),
      change: bandChangeWords(band),
    })),
    ifWritten: consequenceWords(session),
    instead: session.instead ? insteadCellWords(session.instead) : "",
  };
}

/** What the whole week is: its races, and how many are in race week. */
function weekNotes({ state, monday, lines }: ProposedWeek): string[] {
  const { rows } = state.read;
  const races = rows.races.filter(({ day }) => day >= monday && day < monday + 7);
  const racing = lines.filter(({ line }) => line.kind === "race week").length;
  const named = new Set<string>();
  const notes = races.flatMap(({ race, day, matters, startMinute }) => {
    const label = `${race.split(",")[0]}`;
    if (named.has(label)) return [];
    named.add(label);
    const time =
      startMinute === null
        ? ""
        : ` ${String(Math.floor(startMinute / 60)).padStart(2, "0")}:${String(startMinute % 60).padStart(2, "0")}`;
    return [`${label}, ${matters ?? "C"} race, ${weekdayWords(day)}${time}.`];
  });
  if (rows.plates.length === 0) notes.push(weekNoteWords.noPlates);
  if (rows.rules.racks < 0.5) notes.push(weekNoteWords.noRacks);
  return racing === 0
    ? notes
    : [...notes, `${countWords(racing, "athlete")} in race week: sets about half, load kept.`];
}

/** How many lines of a week stand in the Next week tab already. */
function weekAlready(workbook: Workbook, monday: Day): number {
  const tab = findWeekTab(workbook);
  if (!tab) return 0;
  const names = [...readWeekTab(workbook, tab).rowOf.keys()];
  return names.filter((name) => name.startsWith(`${isoFromDay(monday)} `)).length;
}
