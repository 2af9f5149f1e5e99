import type { WeekLine, WeekSession } from "../../actions/messages";

/** The session whose figures stand for the week: the first of its first turn. */
export const leadSession = ({ sessions }: Pick<WeekLine, "sessions">): WeekSession | undefined =>
  sessions.find(({ turn }) => turn === "");

/** The week's other sessions that are another turn's, block's or load's. */
export function otherSessions(line: Pick<WeekLine, "sessions">): readonly WeekSession[] {
  const lead = leadSession(line);
  return line.sessions.filter(
    ({ turn, loadKg, sets, reps }) =>
      turn !== "" || loadKg !== lead!.loadKg || sets !== lead!.sets || reps !== lead!.reps,
  );
}
