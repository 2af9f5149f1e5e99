import { blockText, rotation } from "../../coaching/blocks/block";
import { isoFromDay } from "../../coaching/calendar/day";
import { withTheirOwn } from "../../coaching/next-week/line-reason";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { weekdayWords } from "../../words/days";
import { dressOf } from "../../words/dress";
import { byHandWords, leftOutWords } from "../../words/next-week-tab";
import { bandAgainWords } from "../../words/pages";
import type { PrintedNumbers } from "../../words/printed-numbers";
import { holdWords } from "../../words/reasons-hold";
import { waitingWords } from "../../words/waiting-rows";
import {
  bandChangeWords,
  bandLiftWords,
  bandSpeedWords,
  boxWords,
  briefWords,
  consequenceWords,
  insteadCellWords,
  lineReasonWords,
  platesWords,
} from "../../words/week";
import { gymDaysWords } from "../../words/week-days";
import type { WeekLine, WeekSession } from "../messages";
import { rowsNotUsed } from "../row-check/rows-not-used";
import type { StateOfSquad } from "../squad/state-of-squad";
import type { FieldByHand } from "./fields-by-hand";
import { laddersAhead } from "./ladders-ahead";
import { hundredths } from "./planned-lines";
import type { ProposedWeek } from "./proposed-week";

/** One athlete's proposal as the sidebar shows it. */
export function weekLine(
  state: StateOfSquad,
  { line, leftOut, noRack, byHand }: ProposedWeek["lines"][number],
): Omit<WeekLine, "deleted"> {
  const season = state.hold.of(line.athlete);
  const { told } = state.numbers;
  const about = athleteNamed(state.read.rows.athletes, line.athlete);
  const { names, spells } = state.waiting(line.athlete);
  const waits = [...spells, ...names];
  // A name that waits is told first where nothing else makes the line one to read first.
  const [first] = line.odd ? spells : waits;
  // Whose rows wait under another name is not without rows.
  const reasons = line.reasons.filter(({ code }) => code !== "no-sets-yet" || names.length === 0);
  // What looks like time off may be rows that could not be read.
  const unread = withTheirOwn(reasons).some(({ code }) => /^(?:restart|no-sets-yet)/.test(code))
    ? rowsNotUsed(state.read, line.athlete)
    : 0;
  const word = line.not === "out" ? "out" : holdWords(season);
  return {
    athlete: line.athlete,
    group: about?.group ?? "",
    event: about?.event ?? "",
    odd: line.odd || waits.length > 0,
    word,
    dress: dressOf(word),
    brief: leftOut
      ? leftOutWords.replace(".", "")
      : (first?.brief ?? (told(briefWords({ ...line, reasons })) || (names[0]?.brief ?? ""))),
    why: [
      ...(leftOut ? [leftOutWords] : othersByHand(byHand)),
      ...waits.map((one) => `${waitingWords.whole(one)}.`),
      ...(leftOut ? [] : reasons.map(lineReasonWords)),
      ...(unread > 0 ? [waitingWords.unread(unread)] : []),
    ].map(told),
    exercise: line.exercise,
    sessions: line.sessions.map((session) => weekSession(line, session, state.numbers)),
    leftOut,
    byHand: byHand.length > 0,
    noRack,
    daysSaid: line.days === null ? [] : gymDaysWords(line.days),
    ahead: laddersAhead(line),
    blocks: rotation.map(blockText),
    days: (line.days?.all ?? []).map(({ day, refused }) => ({
      day: isoFromDay(day),
      label: `${weekdayWords(day)}${refused ? ", refused" : ""}`,
      why: refused?.code ?? "",
    })),
  };
}

/** What was set besides a session's bar, of which its own reason says so. */
function othersByHand(byHand: readonly FieldByHand[]): readonly string[] {
  const fields = byHand.flatMap(({ field }) =>
    field === "block" || field === "loadKg" || field === "sets" ? [] : [field],
  );
  return fields.length === 0 ? [] : [byHandWords(fields)];
}

function weekSession(
  { exercise }: ProposedLine,
  session: ProposedSession,
  numbers: PrintedNumbers,
): WeekSession {
  const { told, marked } = numbers;
  return {
    lift: session.exercise === exercise ? "" : session.exercise,
    turn: session.turn,
    day: isoFromDay(session.day),
    dayWords: weekdayWords(session.day),
    block: blockText(session.block),
    sets: session.sets,
    reps: session.reps,
    loadKg: session.loadKg,
    plates: session.plates,
    platesWords: platesWords(session.plates, numbers),
    barKg: session.barKg,
    markerKg: hundredths(session.markerKg),
    speedFloor: hundredths(session.speedFloor),
    stack: marked(boxWords(session)),
    contacts: session.contacts,
    bands: session.bands.map((band) => ({
      speed: marked(bandSpeedWords(band)),
      again: bandAgainWords(band, numbers),
      lift: told(bandLiftWords(band)),
      change: marked(bandChangeWords(band)),
    })),
    ifWritten: consequenceWords(session).map(told),
    instead: session.instead ? told(insteadCellWords(session.instead)) : "",
  };
}
