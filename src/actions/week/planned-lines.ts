import { blockText } from "../../coaching/blocks/block";
import { isoFromDay } from "../../coaching/calendar/day";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import { assistanceWords } from "../../words/session";
import { platesCellWords, shortWhyWords, stackWords } from "../../words/week";
import type { CellOfRow, PlannedLine } from "./plan-lines";

/** The lines of the tab for one athlete's proposal: one for each session. */
export function plannedLines(line: ProposedLine, stepKg: number): PlannedLine[] {
  const why = shortWhyWords(line);
  return line.sessions.map((session, at) => ({
    athlete: line.athlete,
    session: at + 1,
    cells: {
      athlete: line.athlete,
      marker: session.markerKg ?? "",
      today: (cell) => ({ formula: dayFormula(session, stepKg, cell) }),
      day: { day: isoFromDay(session.day) },
      sets: blockText({ sets: session.sets, reps: session.reps }),
      load: session.loadKg,
      plates: platesCellWords(session.plates),
      floor: session.speedFloor === null ? "" : hundredths(session.speedFloor),
      stack:
        session.stackKg.length > 0
          ? stackWords(session.stackKg)
          : session.stackCm === null
            ? ""
            : `${session.stackCm} cm`,
      contacts: session.contacts,
      assistance: assistanceWords(session.items),
      why,
    },
  }));
}

/** The cell that answers to one typed speed: the marker's usual speed stands in the formula. */
function dayFormula(session: ProposedSession, stepKg: number, cell: CellOfRow): string {
  const usual = session.usualMarkerSpeed === null ? '""' : hundredths(session.usualMarkerSpeed);
  return `=DAY_LOAD(${cell("typed")},${usual},${cell("load")},${session.sets},${stepKg})`;
}

const hundredths = (speed: number) => Math.round(speed * 100) / 100;
