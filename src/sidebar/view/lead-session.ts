import type { WeekLine, WeekSession } from "../../actions/messages";

/** The session whose figures stand for the week: the first of the lift the athlete is on, or in a week without it the first. */
export const leadSession = ({ sessions }: Pick<WeekLine, "sessions">): WeekSession | undefined =>
  sessions.find(({ lift }) => lift === "") ?? sessions[0];

/** The week's other sessions that are another lift's, block's or load's. */
export function otherSessions(line: Pick<WeekLine, "sessions">): readonly WeekSession[] {
  const lead = leadSession(line);
  return line.sessions.filter(
    ({ lift, loadKg, sets, reps }) =>
      lift !== lead!.lift || loadKg !== lead!.loadKg || sets !== lead!.sets || reps !== lead!.reps,
  );
}
