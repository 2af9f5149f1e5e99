import { blockText } from "../../coaching/blocks/block";
import { isoFromDay } from "../../coaching/calendar/day";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import { type NumberStyle, type PrintedNumbers, printedNumbers } from "../../words/printed-numbers";
import { assistanceWords } from "../../words/session";
import {
  insteadCellWords,
  platesCellWords,
  platesOfOtherLoadWords,
  sessionWhyWords,
  stackToRead,
} from "../../words/week";
import type { CellOfRow, PlannedCells, PlannedLine } from "./plan-lines";

/** What the cells of a line need beside the proposal. */
export type LineSettings = {
  /** Decimal mark of the coach's rows. */
  readonly mark: NumberStyle["mark"];
  /** Smallest change of load on the bar, kg. */
  readonly stepKg: number;
  /** Share off a clearly slow day, fraction. */
  readonly shareOff: number;
  /** Range of the Plates table where steps alone would name loads that cannot be built; null otherwise. */
  readonly platesFor: (session: ProposedSession) => string | null;
};

/** The lines of the tab for one athlete's proposal: one for each session. */
export function plannedLines(line: ProposedLine, settings: LineSettings): PlannedLine[] {
  return line.sessions.map((session, at) => ({
    athlete: line.athlete,
    session: at + 1,
    day: isoFromDay(session.day),
    cells: (unit) => cellsOf(line, session, settings, printedNumbers({ ...settings, unit })),
  }));
}

function cellsOf(
  line: ProposedLine,
  session: ProposedSession,
  settings: LineSettings,
  numbers: PrintedNumbers,
): PlannedCells {
  const { instead } = session;
  const { exact, told, marked } = numbers;
  const mass = (kg: number | null) => (kg === null ? "" : exact(kg));
  return {
    athlete: line.athlete,
    marker: mass(session.markerKg),
    today: instead
      ? told(insteadCellWords(instead))
      : (cell) => ({
          formula: `=${liftNamed(line, session)}${dayFormula(session, settings, numbers, cell)}`,
        }),
    day: { day: isoFromDay(session.day) },
    sets: blockText({ sets: session.sets, reps: session.reps }),
    load: mass(instead ? instead.loadKg : session.loadKg),
    plates: instead ? "" : (cell) => ({ formula: platesFormula(session, numbers, cell) }),
    floor: hundredths(session.speedFloor) ?? "",
    stack: marked(stackToRead(session, numbers)),
    contacts: session.contacts,
    assistance: told(assistanceWords(session.items)),
    why: told(sessionWhyWords(line, session)),
  };
}

/** In front of what is said of the day, whose lift it is: one done in turn is named. */
function liftNamed({ exercise }: ProposedLine, session: ProposedSession): string {
  return session.exercise === exercise ? "" : `"${session.exercise.replace(/"/g, '""')}: "&`;
}

/**
 * The cell that answers to one typed speed, of the marker or without one of the first work set: its
 * usual speed and the low end of the usual ones stand in the formula, so that a phone needs nothing else. How the answer writes figures comes last, where
 * it is not in kg with a point.
 */
function dayFormula(
  session: ProposedSession,
  { stepKg, shareOff, platesFor }: LineSettings,
  { unit, mark, exact }: PrintedNumbers,
  cell: CellOfRow,
): string {
  const known = (speed: number | null) => (speed === null ? '""' : hundredths(speed));
  const usual = known(session.usualLeadSpeed);
  const low = known(session.lowLeadSpeed);
  const plates = platesFor(session) ?? '""';
  const first = session.markerKg === null;
  const seenAt = !first ? cell("marker") : usual === '""' ? usual : cell("load");
  const figures = `${unit === "lb" ? unit : ""}${mark === "," ? mark : ""}`;
  return `DAY_LOAD(${cell("typed")},${usual},${cell("load")},${session.setsAfterLead},${exact(stepKg)},${seenAt},${plates},${exact(session.barKg)},${low},${shareOff}${figures && `,"${figures}"`})`;
}

/** The plates, and of which load they are once the coach changes it: nothing here counts plates anew. */
function platesFormula(
  { plates, loadKg }: ProposedSession,
  numbers: PrintedNumbers,
  cell: CellOfRow,
): string {
  const words = platesCellWords(plates, numbers);
  const other = platesOfOtherLoadWords(plates, loadKg, numbers);
  return `=IF(${cell("load")}=${numbers.exact(loadKg)},"${words}","${other}")`;
}

/** To two decimals, as speeds are written. */
export const hundredths = <Value extends number | null>(value: Value): Value =>
  (value && Math.round(100 * value) / 100) as Value;
