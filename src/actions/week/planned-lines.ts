import { blockText } from "../../coaching/blocks/block";
import { isoFromDay } from "../../coaching/calendar/day";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import { assistanceWords } from "../../words/session";
import { boxWords, insteadCellWords, platesCellWords, sessionWhyWords } from "../../words/week";
import type { CellOfRow, PlannedLine } from "./plan-lines";

/** What the cells of a line need beside the proposal. */
export type LineSettings = {
  /** Smallest change of load on the bar, kg. */
  readonly stepKg: number;
  /** Share off a clearly slow day, fraction. */
  readonly shareOff: number;
  /** Range of the Plates table where steps alone would name loads that cannot be built; null otherwise. */
  readonly platesFor: (session: ProposedSession) => string | null;
};

/** The lines of the tab for one athlete's proposal: one for each session. */
export function plannedLines(line: ProposedLine, settings: LineSettings): PlannedLine[] {
  return line.sessions.map((session, at) => {
    const { instead } = session;
    return {
      athlete: line.athlete,
      session: at + 1,
      cells: {
        athlete: line.athlete,
        marker: session.markerKg ?? "",
        today: instead
          ? insteadCellWords(instead)
          : (cell) => ({ formula: dayFormula(session, settings, cell) }),
        day: { day: isoFromDay(session.day) },
        sets: blockText({ sets: session.sets, reps: session.reps }),
        load: instead ? (instead.loadKg ?? "") : session.loadKg,
        plates: instead ? "" : platesCellWords(session.plates),
        floor: hundredths(session.speedFloor) ?? "",
        stack: boxWords(session),
        contacts: session.contacts,
        assistance: assistanceWords(session.items),
        why: sessionWhyWords(line, session),
      },
    };
  });
}

/**
 * The cell that answers to one typed speed: the marker's usual speed and the slowest still usual stand
 * in the formula, so that a phone needs nothing else.
 */
function dayFormula(session: ProposedSession, settings: LineSettings, cell: CellOfRow): string {
  const { stepKg, shareOff, platesFor } = settings;
  const known = (speed: number | null) => (speed === null ? '""' : hundredths(speed));
  const usual = known(session.usualMarkerSpeed);
  const low = known(session.lowMarkerSpeed);
  const plates = platesFor(session) ?? '""';
  const marker = session.markerKg === null ? '""' : cell("marker");
  return `=DAY_LOAD(${cell("typed")},${usual},${cell("load")},${session.sets},${stepKg},${marker},${plates},${session.barKg},${low},${shareOff})`;
}

/** To two decimals, as speeds are written. */
export const hundredths = <Value extends number | null>(value: Value): Value =>
  (value && Math.round(100 * value) / 100) as Value;
